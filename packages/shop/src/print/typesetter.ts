import { createRequire } from "node:module";
import { NodeCompiler, type NodeTypstDocument } from "@myriaddreamin/typst-ts-node-compiler";

/** The one family that sheets are set in; it comes in a package, so that every machine sets the same page. */
const FONTS = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"];

/** Sets pages from a layout and data. */
export interface Typesetter {
  readonly compiler: NodeCompiler;
  /** @throws where the layout itself is at fault, which no data of a job may bring about */
  readonly set: (layout: string, inputs: Readonly<Record<string, string>>) => NodeTypstDocument;
}

let ready: Typesetter | undefined;

/** The typesetter of this process, made when it is first needed. */
export function typesetter(): Typesetter {
  ready ??= made();
  return ready;
}

function made(): Typesetter {
  const { resolve } = createRequire(import.meta.url);
  const compiler = NodeCompiler.create({
    fontArgs: [{ fontPaths: FONTS.map((file) => resolve(`dejavu-fonts-ttf/ttf/${file}`)) }],
  });
  return {
    compiler,
    set: (layout, inputs) => {
      const done = compiler.compile({ mainFileContent: layout, inputs: { ...inputs } });
      // A font that is not found is only a warning, and the page then comes out empty: it is a fault here.
      const fault = done.takeDiagnostics();
      const words = fault ? compiler.fetchDiagnostics(fault).map(({ message }: { message: string }) => message) : [];
      if (done.result && words.length === 0) return done.result;
      throw new Error(`the sheet could not be set: ${words.join("; ")}`);
    },
  };
}
