import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF as an independent reader sees it. */
export interface PdfRead {
  readonly pages: number;
  /** Width and height of the first page [pt]. */
  readonly size: readonly [number, number];
  readonly title: string;
  /** Text of the first page, in one line. */
  readonly text: string;
}

/** Reads a PDF back. */
export async function pdfRead(bytes: Uint8Array): Promise<PdfRead> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const page = await document.getPage(1);
  const { items } = await page.getTextContent();
  const [left, bottom, right, top] = page.view;
  const { info } = await document.getMetadata();
  return {
    pages: document.numPages,
    size: [right - left, top - bottom],
    title: String((info as { Title?: string }).Title ?? ""),
    text: items
      .map((item) => ("str" in item ? item.str : ""))
      .join(" ")
      .replace(/[\s\u200b]+/g, " "),
  };
}
