import type { Readable } from "node:stream";
import type { FastifyReply } from "fastify";
import { FILE_POLICY } from "./security-headers.ts";

/** A file as it goes out. */
export interface FileOut {
  readonly name: string;
  readonly mediaType: string;
  readonly content: string | Uint8Array | Readable;
  /** Shown in the browser where it can; else saved. */
  readonly shown?: boolean;
}

/** Media types by the end of a name, with the character set of what is text. */
const TYPES: Readonly<Record<string, string>> = {
  csv: "text/csv; charset=utf-8",
  html: "text/html; charset=utf-8",
  pdf: "application/pdf",
  json: "application/json; charset=utf-8",
  svg: "image/svg+xml; charset=utf-8",
  txt: "text/plain; charset=utf-8",
};

/** Media type of a sheet by its name. */
export function typeOfSheet(name: string): string {
  return TYPES[name.split(".").at(-1) ?? ""] ?? "application/octet-stream";
}

/** Sends a file under its own name; when it is opened by itself, no script in it runs. */
export function sendFile(reply: FastifyReply, { name, mediaType, content, shown = false }: FileOut): FastifyReply {
  const plain = name.replace(/[^\w.-]/g, "_");
  const whole = encodeURIComponent(name).replace(
    /['()*]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return reply
    .type(mediaType)
    .header("content-disposition", `${shown ? "inline" : "attachment"}; filename="${plain}"; filename*=UTF-8''${whole}`)
    .header("content-security-policy", FILE_POLICY)
    .header("cache-control", "no-store")
    .send(content);
}
