import * as z from "zod";
import { field } from "../field.ts";
import { choice, section, text } from "../plain-field.ts";
import { shown } from "../problem.ts";
import { quantity } from "../quantity-field.ts";
import { CHAMFER_ANGLE, CHAMFER_WIDTH } from "./chamfer.ts";
import { HOLE_DIAMETER } from "./inquiry.ts";

/** A cell of a table: a number in the table's unit, or a quantity with its own unit. */
export type Cell = number | string | { readonly value: number | string; readonly unit: string };

const cell = (description: string) =>
  field<Cell, Cell>(
    {
      description: `${description} A number in the unit of the table, or a quantity with its unit.`,
      anyOf: [{ type: "number" }, { type: "string" }, { type: "object" }],
    },
    (input, refuse) => {
      if (typeof input === "number" || typeof input === "string") return input;
      if (typeof input === "object" && input !== null && "value" in input && "unit" in input) return input as Cell;
      const got = shown(input);
      const wrong = got === "nothing" ? "nothing is given" : `got ${got}`;
      refuse({ got, wrong, expected: "give a number in the table's unit or a quantity with its unit" });
      return undefined;
    },
  );

const rowSchema = section("One cutter, at the centre of its diamond face.", {
  radius: cell("Distance from the bit axis."),
  azimuth: cell("Angle about the axis, growing in the sense of rotation."),
  height: cell("Height along the axis, positive toward the hole bottom; any level may be zero."),
  profileAngle: cell("Angle of the outward normal of the profile: 0 at the lowest point, 90 deg at gauge.").optional(),
  backRake: cell("Back rake, positive where the top of the face leans forward."),
  sideRake: cell("Side rake, positive where the face turns outward; 0 where not given.").optional(),
  faceDiameter: cell("Diameter of the face; or give the cutter's code.").optional(),
  cutter: text("Code of the cutter.", "1308").optional(),
  length: cell("Length of the cutter.").optional(),
  wing: cell("Number of its wing, from 1.").optional(),
  chamferWidth: cell("Chamfer width along the face.").optional(),
  chamferAngle: cell("Chamfer angle from the plane of the face.").optional(),
  wornHeight: cell("Height worn off the edge, along the face.").optional(),
});

/** A bit that lies on the bench. `more` are the fields it shares with a bit to be laid out. */
export function measuredSchema<More extends z.ZodRawShape>(more: More) {
  return section("A bit of any make as measured: a table of its cutters, as rows or as CSV text.", {
    diameter: quantity(
      "diameter",
      "Diameter over the gauge; that of the hole where not given.",
      HOLE_DIAMETER,
    ).optional(),
    units: section("Units of the numbers of the table that carry none.", {
      length: choice("Unit of lengths.", ["mm", "in"]).optional(),
      angle: choice("Unit of angles.", ["deg", "rad"]).optional(),
    }).optional(),
    measuredAt: choice(
      "What radius and height of the table stand for: the centre of the face, or the cutting tip that a height gauge reads. The azimuth is that of the face centre.",
      ["face centre", "cutting tip"],
    ).optional(),
    rows: z.array(rowSchema).min(1).optional().meta({ description: "One row for each cutter." }),
    csv: text(
      "The same table as CSV text with a header; a unit may stand in brackets behind a name.",
      "radius (mm),azimuth (deg),height (mm),back rake (deg),cutter\n20,0,0,15,1308",
    ).optional(),
    cutter: text("Code of the cutters that have none of their own.", "1308").optional(),
    chamferAngle: quantity("angle", "Chamfer angle of cutters that have none of their own.", CHAMFER_ANGLE).optional(),
    chamferWidth: quantity("length", "Chamfer width of cutters that have none of their own.", CHAMFER_WIDTH).optional(),
    maker: text("What is known of the maker and the bit.").optional(),
    ...more,
  });
}
