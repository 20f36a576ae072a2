// Its types add the reading of forms to a request.

import { createWriteStream } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable, Transform } from "node:stream";
import { pipeline } from "node:stream/promises";
import { bytesInWords } from "@bitwright/store";
import type {} from "@fastify/multipart";
import type { FastifyRequest } from "fastify";
import { HttpProblem } from "./problem-details.ts";

/** A file that was sent, on the disk of this machine until it has been dealt with. */
export interface Upload {
  readonly path: string;
  /** As the sender calls it; absent where it came without a name. */
  readonly name?: string;
  readonly mediaType: string;
  /** Fields sent with it. */
  readonly fields: Readonly<Record<string, string>>;
}

/**
 * Takes the one file of a request, sent as the body itself or as `file` of a form, and hands it on from a temporary file:
 * what keeps it can then read it at one go, however slowly it was sent.
 */
export async function withUpload<T>(
  request: FastifyRequest,
  most: number,
  use: (upload: Upload) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "bitwright-upload-"));
  const path = join(folder, "file");
  try {
    return await use(request.isMultipart() ? await ofForm(request, path, most) : await ofBody(request, path, most));
  } catch (error) {
    // Nobody is there any more to hear what went wrong.
    if (request.raw.destroyed && !request.raw.complete) throw new HttpProblem("bad-request", "the sending broke off");
    throw error;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function ofBody(request: FastifyRequest, path: string, most: number): Promise<Upload> {
  const mediaType = (request.headers["content-type"] ?? "").split(";")[0]?.trim().toLowerCase() ?? "";
  if (Number(request.headers["content-length"] ?? 0) > most) throw tooLarge(most);
  if (!(request.body instanceof Readable)) throw new HttpProblem("bad-request", "the body is empty; give a file");
  await pipeline(request.body, upTo(most), createWriteStream(path, { mode: 0o600 }));
  return { path, mediaType, fields: {} };
}

async function ofForm(request: FastifyRequest, path: string, most: number): Promise<Upload> {
  const fields: Record<string, string> = {};
  let found: { name?: string; mediaType: string } | undefined;
  for await (const part of request.parts({ limits: { fileSize: most, files: 1, fields: 10, fieldSize: 10_000 } })) {
    if (part.type === "field") {
      fields[part.fieldname] = String(part.value);
    } else {
      await pipeline(part.file, createWriteStream(path, { mode: 0o600 }));
      if (part.file.truncated) throw tooLarge(most);
      found = { mediaType: part.mimetype, ...(part.filename ? { name: part.filename } : {}) };
    }
  }
  if (!found) throw new HttpProblem("bad-value", "the form holds no file; give one as `file`");
  return { path, fields, ...found };
}

function upTo(most: number): Transform {
  let size = 0;
  return new Transform({
    transform(bytes: Buffer, _, done) {
      size += bytes.length;
      done(size > most ? tooLarge(most) : null, bytes);
    },
  });
}

const tooLarge = (most: number) => new HttpProblem("too-large", `give a file of at most ${bytesInWords(most)}`);
