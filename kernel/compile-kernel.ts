import { fileURLToPath } from "node:url";
import asc from "assemblyscript/asc";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const SOURCE = "kernel/edge-kernel.ts";
const BINARY = "kernel.wasm";

/** Compiles the kernel; the same compiler always gives the same bytes. */
export async function compileKernel(): Promise<Uint8Array> {
  let binary: Uint8Array | undefined;
  const options = ["--baseDir", ROOT, "--outFile", BINARY, "-O3", "--noAssert", "--runtime", "stub"];
  const { error, stderr } = await asc.main([SOURCE, ...options], {
    writeFile: (name, contents) => {
      if (name === BINARY && typeof contents !== "string") binary = contents;
    },
  });
  if (error) throw new Error(`${SOURCE} does not compile: ${stderr.toString()}`, { cause: error });
  if (!binary) throw new Error(`${SOURCE} gave no binary`);
  return binary;
}

const DIGITS_A_LINE = 96;

/** The compiled kernel as the module of the engine that holds it. */
export function kernelModule(binary: Uint8Array): string {
  const digits = Buffer.from(binary).toString("hex");
  const lines = digits.match(new RegExp(`.{1,${DIGITS_A_LINE}}`, "g")) ?? [];
  return [
    "/** WebAssembly of kernel/edge-kernel.ts as hexadecimal digits, written by `npm run kernel`; a test holds it to that source. */",
    "export const KERNEL_CODE: string =",
    `${lines.map((line) => `  "${line}"`).join(" +\n")};`,
    "",
  ].join("\n");
}
