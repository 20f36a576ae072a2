import { createReadStream } from "node:fs";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import * as z from "zod";
import { sendFile } from "../http/file-reply.ts";
import { HttpProblem } from "../http/problem-details.ts";
import { withUpload } from "../http/upload.ts";
import type { App, ServerContext } from "../server-context.ts";
import type { CreateTraveler } from "./create-traveler.ts";
import { fileReply, idParams, noteSchema, refusals, savedTravelerSchema } from "./shapes.ts";
import { noSuchFile, savedOf, workedBeforeSaving } from "./traveler-texts.ts";

const attachmentSchema = z
  .object({
    name: z.string(),
    mediaType: z.string(),
    size: z.int().meta({ description: "In bytes." }),
    sha256: z.string(),
    addedAt: z.string().meta({ format: "date-time" }),
    addedBy: z.string(),
    note: z.string(),
  })
  .meta({ id: "Attachment" });

const ZIP_TYPES = ["application/zip", "application/x-zip-compressed"];
const countsSchema = z.object({ papers: z.int(), versions: z.int(), refusals: z.int(), attachments: z.int() });
const importedSchema = z
  .object({ traveler: savedTravelerSchema.optional(), shop: countsSchema.optional() })
  .meta({ id: "Imported", description: "The traveler that was made, or what the whole shop was filled with." });

/** Bodies that are files: the address takes them as they are or as `file` of a form. */
const files = (description: string, ...types: string[]) => ({
  consumes: [...types, "multipart/form-data"],
  body: z.any().meta({ description: `${description} Sent as the body itself, or as \`file\` of a form.` }),
});

/** Files that go in and out: attachments, traveler files, the whole shop. Runs where bodies are not read as JSON. */
export function fileRoutes(app: App, context: ServerContext, create: CreateTraveler): void {
  const { store, limits, who } = context;
  const { attachments, papers } = store;

  app.get(
    "/api/travelers/:id/attachments",
    {
      schema: {
        tags: ["attachments"],
        operationId: "listAttachments",
        summary: "Files that go with a traveler",
        params: idParams,
        response: { 200: z.object({ attachments: z.array(attachmentSchema) }), ...refusals },
      },
    },
    async ({ params: { id } }) => ({ attachments: (await attachments.list(id)).map(attachmentOf) }),
  );

  app.post(
    "/api/travelers/:id/attachments",
    {
      schema: {
        tags: ["attachments"],
        operationId: "addAttachment",
        summary: "Keeps a file with a traveler",
        ...files("Any kind of file.", "application/octet-stream"),
        params: idParams,
        querystring: z.object({
          name: z
            .string()
            .max(200)
            .optional()
            .meta({ description: "Name of the file; that of the form where not given." }),
          note: noteSchema.optional(),
        }),
        response: { 201: attachmentSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const { id } = request.params;
      await papers.read({ kind: "traveler", name: id });
      const added = await withUpload(request, limits.attachment, ({ path, mediaType, fields, ...sent }) => {
        const name = request.query.name ?? fields.name ?? sent.name ?? "";
        const note = request.query.note ?? fields.note ?? "";
        const kind = mediaType === "" ? "application/octet-stream" : mediaType;
        return attachments.add({ traveler: id, name, mediaType: kind, who, note, bytes: createReadStream(path) });
      });
      reply
        .code(201)
        .header("location", `/api/travelers/${encodeURIComponent(id)}/attachments/${encodeURIComponent(added.name)}`);
      return attachmentOf(added);
    },
  );

  app.get(
    "/api/travelers/:id/attachments/:name",
    {
      schema: {
        tags: ["attachments"],
        operationId: "downloadAttachment",
        summary: "A file that goes with a traveler",
        params: idParams.extend({ name: z.string().min(1).max(400) }),
        response: { 200: fileReply("The file", "application/octet-stream"), ...refusals },
      },
    },
    async ({ params: { id, name } }, reply) => {
      const there = await attachments.list(id);
      const one = there.find((each) => each.name === name.normalize("NFC"));
      if (!one)
        throw noSuchFile(
          name,
          there.map((each) => each.name),
        );
      reply.header("content-length", one.size);
      return sendFile(reply, { name, mediaType: one.mediaType, content: Readable.from(attachments.bytes(one)) });
    },
  );

  app.get(
    "/api/export",
    {
      schema: {
        tags: ["shop"],
        operationId: "exportShop",
        summary: "The whole shop in one zip, read back before it is sent",
        response: { 200: fileReply("The zip", "application/zip"), ...refusals },
      },
    },
    async (_, reply) => {
      const folder = await mkdtemp(join(tmpdir(), "bitwright-export-"));
      const remove = () => void rm(folder, { recursive: true, force: true });
      try {
        const path = join(folder, "shop.zip");
        await store.backup(path);
        const content = createReadStream(path).on("close", remove);
        return sendFile(reply, { name: "bitwright-shop.zip", mediaType: "application/zip", content });
      } catch (error) {
        remove();
        throw error;
      }
    },
  );

  app.post(
    "/api/import",
    {
      schema: {
        tags: ["shop"],
        operationId: "importFile",
        summary: "A traveler file becomes a new traveler; the zip of a whole shop fills an empty one",
        ...files("A traveler file or the zip of a shop.", "application/json", "application/zip"),
        response: { 201: importedSchema, ...refusals },
      },
    },
    async (request, reply) => {
      const imported = await withUpload(request, limits.import, async ({ path, mediaType, name = "" }) => {
        if (ZIP_TYPES.includes(mediaType) || /\.zip$/i.test(name)) return { shop: await store.restore(path) };
        if (mediaType !== "application/json" && !/\.json$/i.test(name)) {
          throw new HttpProblem(
            "media-type",
            `got "${mediaType}"; give a traveler as application/json or a shop as application/zip`,
          );
        }
        return { traveler: await importedTraveler(context, create, path) };
      });
      reply.code(201);
      return imported;
    },
  );
}

async function importedTraveler(context: ServerContext, create: CreateTraveler, path: string) {
  const text = textOfBytes(await readFile(path));
  const worked = await workedBeforeSaving(context, text);
  const id = await create(text, "imported from a file");
  return { ...savedOf(id, await context.store.papers.read({ kind: "traveler", name: id }, 1)), ...worked };
}

function textOfBytes(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new HttpProblem("bad-value", "the file is no text; give a traveler saved in UTF-8");
  }
}

function attachmentOf(entry: Awaited<ReturnType<ServerContext["store"]["attachments"]["add"]>>) {
  const { name, mediaType, size, sha256, addedAt, who, note } = entry;
  return { name, mediaType, size, sha256, addedAt, addedBy: who, note };
}
