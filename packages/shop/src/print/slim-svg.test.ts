import { describe, expect, it } from "vitest";
import { slimSvg } from "./slim-svg.ts";

const first = `g${"0123456789ABCDEF".repeat(2)}`;
const second = `g${"FEDCBA9876543210".repeat(2)}`;

describe("slimSvg", () => {
  it("says the same with less", () => {
    const svg = `<g transform="matrix(1 0 0 -1 28.346456692913385 -0.00001)">
      <use xlink:href="#${first}" x="0" y="0" fill="#000000" fill-rule="nonzero"/>
      <use xlink:href="#${second}" x="9.0769" y="1" fill="#ffffff" fill-rule="nonzero"/>
    </g>
    <symbol id="${first}"/><symbol id="${second}"/>`;
    expect(slimSvg(svg)).toBe(
      `<g transform="matrix(1 0 0 -1 28.346 0)"><use xlink:href="#g0"/><use xlink:href="#g1" x="9.077" y="1" fill="#ffffff"/></g><symbol id="g0"/><symbol id="g1"/>`,
    );
  });

  it("leaves colours, the data of pictures and a fill that is not black alone", () => {
    const svg = `<path fill="#000000" d="M 1 2"/><image xlink:href="data:image/svg+xml;base64,PHN2Zy8+"/>`;
    expect(slimSvg(svg)).toBe(svg);
  });
});
