import { type FaultKind, StoreFault } from "@bitwright/store";
import { hasZodFastifySchemaValidationErrors } from "fastify-type-provider-zod";
import { badValues, type FieldProblem, HttpProblem, type ProblemKind } from "./problem-details.ts";

/** What a refusal of the store is told as. */
const KIND_OF_FAULT: Readonly<Record<FaultKind, ProblemKind>> = {
  "bad-value": "bad-value",
  "not-found": "not-found",
  "in-use": "out-of-reach",
  newer: "bad-value",
  "in-the-way": "in-the-way",
  damaged: "bad-value",
  "out-of-reach": "out-of-reach",
};

/** What the server's own machinery refuses, by its code, in words of ours. */
const KIND_OF_CODE: Readonly<Record<string, readonly [ProblemKind, string]>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: ["media-type", "give JSON, with content-type: application/json"],
  FST_ERR_CTP_BODY_TOO_LARGE: ["too-large", "the body is larger than this address takes"],
  FST_REQ_FILE_TOO_LARGE: ["too-large", "the file is larger than this address takes"],
  FST_ERR_CTP_INVALID_JSON_BODY: ["bad-request", "the body is not JSON"],
  FST_ERR_CTP_EMPTY_JSON_BODY: ["bad-request", "the body is empty; give JSON"],
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: ["bad-request", "the body is not as long as content-length says"],
  FST_ERR_BAD_URL: ["bad-request", "the address cannot be read"],
};

/** Disks and servers that fail under the database, by the code that they tell. */
const DISK = /^(SQLITE_(FULL|IOERR|READONLY|CANTOPEN|CORRUPT)|ENOSPC|EIO|EROFS|ECONN|57P|08)/;

/** The words of a pool of threads that takes no more, which carry no code. */
const QUEUE_IS_FULL = "Task queue is at limit";

/** What anything that was thrown is told as. The words of a fault of the program stay inside. */
export function problemOfError(error: unknown): HttpProblem {
  if (error instanceof HttpProblem) return error;
  if (error instanceof StoreFault) return ofStore(error);
  if (hasZodFastifySchemaValidationErrors(error)) return ofSchema(error);
  const {
    code = "",
    statusCode = 500,
    message = "",
  } = error as { code?: string; statusCode?: number; message?: string };
  const known = KIND_OF_CODE[code];
  if (known) return new HttpProblem(...known);
  if (DISK.test(code)) return new HttpProblem("out-of-reach", `the disk or the database of the shop fails (${code})`);
  if (message === QUEUE_IS_FULL)
    return new HttpProblem("too-many", "too many travelers wait to be worked up; come back later");
  if (statusCode === 404) return new HttpProblem("not-found", "nothing is there");
  if (statusCode === 413) return new HttpProblem("too-large", message);
  if (statusCode === 406 || statusCode === 415) return new HttpProblem("media-type", message);
  if (statusCode >= 400 && statusCode < 500) return new HttpProblem("bad-request", message);
  return new HttpProblem("fault", "the program failed; what was sent is not at fault, and nothing was changed");
}

function ofStore({ kind, problem }: StoreFault): HttpProblem {
  const told = KIND_OF_FAULT[kind];
  return told === "bad-value" ? badValues([problem]) : new HttpProblem(told, problem.message);
}

/** A request that does not have the shape of its address; each field told by its path. */
function ofSchema(error: {
  readonly validation: readonly { readonly instancePath: string; readonly message?: string }[];
  readonly validationContext?: string;
}): HttpProblem {
  const within = error.validationContext === "body" ? "" : `${error.validationContext ?? ""}.`;
  const problems = error.validation.map(({ instancePath, message = "is not taken" }): FieldProblem => {
    const steps = instancePath.split("/").filter((step) => step !== "");
    const path = steps.map((step, at) => (/^\d+$/.test(step) ? `[${step}]` : at === 0 ? step : `.${step}`)).join("");
    const named = `${within}${path || "body"}`;
    return { path: named, message: `${named}: ${message}` };
  });
  return new HttpProblem("bad-value", problems.map(({ message }) => message).join("\n"), { problems });
}
