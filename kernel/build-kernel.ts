import { writeFileSync } from "node:fs";
import { compileKernel, kernelModule } from "./compile-kernel.ts";

/** Where the engine keeps the compiled kernel. */
const HELD_AT = "packages/engine/src/cutting/kernel-code.ts";

const binary = await compileKernel();
writeFileSync(HELD_AT, kernelModule(binary));
process.stdout.write(`${HELD_AT}: ${binary.length} bytes of WebAssembly\n`);
