import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { cardPrint } from "@bitwright/shop/print";
import jsqr from "jsqr";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { demoWorkup } from "../support/demo-workup.ts";

const LINK = "http://192.168.1.20:4173/api/travelers/ridge-road/sheets/card.html?units=field";
/** Dots of the picture to a point of the page [-]. */
const SCALE = 2;

/** A page that holds the reader of PDFs, and hands a picture over as bytes in base 64: arrays take minutes. */
const READER = `<!doctype html><title>reader</title>
<script type="module">
  import * as reader from "/pdf.mjs";
  globalThis.reader = reader;
  globalThis.handedOver = (canvas) => {
    const { width, height } = canvas;
    const { data } = canvas.getContext("2d").getImageData(0, 0, width, height);
    let bytes = "";
    for (let at = 0; at < data.length; at += 4) bytes += String.fromCharCode(data[at]);
    return { width, height, bytes: btoa(bytes) };
  };
</script>`;

interface HandedOver {
  readonly width: number;
  readonly height: number;
  readonly bytes: string;
}

declare global {
  var reader: typeof import("pdfjs-dist") | undefined;
  var handedOver: (canvas: HTMLCanvasElement) => HandedOver;
}

interface Picture {
  readonly width: number;
  readonly height: number;
  /** Lightness of each dot, 0 black to 255 white. */
  readonly grey: Uint8Array;
}

let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  browser = await chromium.connect(inject("browser"));
  context = await browser.newContext();
  page = await context.newPage();
  // The reader of PDFs, from its own files, under an address that only this page knows.
  const { resolve } = createRequire(import.meta.url);
  const files = {
    "/": "",
    "/pdf.mjs": "pdfjs-dist/build/pdf.mjs",
    "/pdf.worker.mjs": "pdfjs-dist/build/pdf.worker.mjs",
  };
  for (const [path, file] of Object.entries(files)) {
    await page.route(`http://reader.test${path}`, (route) =>
      file === ""
        ? route.fulfill({ contentType: "text/html", body: READER })
        : route.fulfill({ contentType: "text/javascript", body: readFileSync(resolve(file), "utf8") }),
    );
  }
  await page.goto("http://reader.test/");
  await page.waitForFunction(() => globalThis.reader !== undefined);
});
afterAll(async () => {
  await context?.close();
  await browser?.close();
});

/** The page of a PDF as an independent reader draws it. */
async function ofPdf(pdf: Uint8Array): Promise<Picture> {
  const drawn = await page.evaluate(
    async ({ bytes, scale }) => {
      const { reader } = globalThis;
      if (!reader) throw new Error("the reader is not there");
      reader.GlobalWorkerOptions.workerSrc = "http://reader.test/pdf.worker.mjs";
      const sheet = await (
        await reader.getDocument({ data: Uint8Array.from(atob(bytes), (mark) => mark.charCodeAt(0)) }).promise
      ).getPage(1);
      const viewport = sheet.getViewport({ scale });
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [Math.round(viewport.width), Math.round(viewport.height)];
      const canvasContext = canvas.getContext("2d") as CanvasRenderingContext2D;
      await sheet.render({ canvas, canvasContext, viewport }).promise;
      return globalThis.handedOver(canvas);
    },
    { bytes: Buffer.from(pdf).toString("base64"), scale: SCALE },
  );
  return pictureOf(drawn);
}

/** The page of the drawing as the browser draws it. */
async function ofSvg(svg: string): Promise<Picture> {
  const drawn = await page.evaluate(
    async ({ text, scale }) => {
      const image = new Image();
      image.src = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
      await image.decode();
      const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(text) ?? [];
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [Math.round(Number(width) * scale), Math.round(Number(height) * scale)];
      const canvasContext = canvas.getContext("2d") as CanvasRenderingContext2D;
      canvasContext.drawImage(image, 0, 0, canvas.width, canvas.height);
      return globalThis.handedOver(canvas);
    },
    { text: svg, scale: SCALE },
  );
  return pictureOf(drawn);
}

function pictureOf({ width, height, bytes }: HandedOver): Picture {
  return { width, height, grey: Buffer.from(bytes, "base64") };
}

function codeIn({ width, height, grey }: Picture): string | undefined {
  const pixels = new Uint8ClampedArray(4 * grey.length).fill(255);
  grey.forEach((light, k) => {
    pixels.fill(light, 4 * k, 4 * k + 3);
  });
  return jsqr(pixels, width, height)?.data;
}

/** Share of ink in each square of so many dots; letters may be drawn half a dot apart, but not in another place. */
function ink({ width, height, grey }: Picture, side = 24): number[] {
  const [columns, rows] = [Math.floor(width / side), Math.floor(height / side)];
  const share = new Array<number>(columns * rows).fill(0);
  for (let y = 0; y < rows * side; y++) {
    for (let x = 0; x < columns * side; x++) {
      share[Math.floor(y / side) * columns + Math.floor(x / side)] += (255 - grey[y * width + x]) / (255 * side * side);
    }
  }
  return share;
}

describe("the printed card as drawn by others", () => {
  const workup = demoWorkup("house-well");
  const program = "Bitwright 0.0.0";

  it("carries a code that another reader reads, in the PDF and in the drawing", async () => {
    const { pdf, svg } = cardPrint(workup, { units: "field", program, link: LINK });
    expect(codeIn(await ofPdf(pdf))).toBe(LINK);
    expect(codeIn(await ofSvg(svg))).toBe(LINK);
  });

  it("carries no code where no link is given", async () => {
    expect(codeIn(await ofPdf(cardPrint(workup, { units: "field", program }).pdf))).toBeUndefined();
  });

  it.each(["field", "metric"] as const)(
    "is the same page in the PDF and in the drawing, in %s units",
    async (units) => {
      const { pdf, svg } = cardPrint(workup, { units, program, link: LINK });
      const [printed, drawn] = [await ofPdf(pdf), await ofSvg(svg)];
      expect([drawn.width, drawn.height]).toEqual([printed.width, printed.height]);
      const [inPrint, inDrawing] = [ink(printed), ink(drawn)];
      const most = Math.max(...inPrint.map((share, k) => Math.abs(share - inDrawing[k])));
      expect(Math.max(...inPrint)).toBeGreaterThan(0.3);
      expect(most).toBeLessThan(0.08);
      // The check tells another page from this one.
      const other = ink(await ofSvg(cardPrint(demoWorkup("loop-hole"), { units, program, link: LINK }).svg));
      expect(Math.max(...inPrint.map((share, k) => Math.abs(share - other[k])))).toBeGreaterThan(0.15);
    },
  );

  it("is black on white and greys alone: nothing on it rests on a colour", () => {
    const { svg } = cardPrint(workup, { units: "field", program });
    const colours = new Set(
      [...svg.matchAll(/#[0-9a-f]{6}\b|#[0-9a-f]{3}\b/gi)].map(([colour]) => colour.toLowerCase()),
    );
    for (const colour of colours) expect(colour).toMatch(/^#(?:([0-9a-f]{2})\1\1|([0-9a-f])\2\2)$/);
  });
});
