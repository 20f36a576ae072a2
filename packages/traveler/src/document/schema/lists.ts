import * as z from "zod";
import { section, text } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";
import { pumpMeasures } from "./pump.ts";
import { rigMeasures } from "./rig.ts";
import { rockProperties } from "./rock.ts";
import { pipeMeasures } from "./string.ts";

const id = (what: string, example: string) =>
  text(`Id by which ${what} is picked elsewhere in this document.`, example);
const named = { name: text("Name as printed; the id where not given.").optional() };

/** What a shop adds to the program's lists. */
export const listsSchema = section(
  "What the shop adds to the program's lists; an id of its own wins over one of the program's.",
  {
    rocks: z
      .array(
        section("A rock of the shop's own.", {
          id: id("the rock", "hill-sandstone"),
          ...named,
          like: text("Id of the rock of the table that fills what is not given here.", "sandstone"),
          ...rockProperties,
        }),
      )
      .optional()
      .meta({ description: "Rocks of the shop's own." }),
    cutters: z
      .array(
        section("A cutter of the shop's own.", {
          code: id("the cutter", "1310"),
          faceDiameter: quantity("length", "Diameter of the diamond face.", { least: "3 mm", most: "60 mm" }),
          length: quantity("length", "Length with the diamond table.", { least: "2 mm", most: "60 mm" }),
          tableThickness: quantity("length", "Thickness of the diamond table.", {
            least: "0.2 mm",
            most: "10 mm",
          }).optional(),
        }),
      )
      .optional()
      .meta({ description: "Cutters of the shop's own." }),
    pipe: z
      .array(section("A pipe of the shop's own.", { id: id("the pipe", "our-2-7/8"), ...named, ...pipeMeasures }))
      .optional()
      .meta({ description: "Pipe of the shop's own." }),
    rigs: z
      .array(section("A rig of the customer's.", { id: id("the rig", "rig-2"), ...named, ...rigMeasures }))
      .optional()
      .meta({ description: "Rigs of the customers." }),
    pumps: z
      .array(section("A pump of the customer's.", { id: id("the pump", "pump-2"), ...named, ...pumpMeasures }))
      .optional()
      .meta({ description: "Pumps of the customers." }),
    connections: z
      .array(
        section("A connection that is not on the program's list.", {
          id: id("the connection", "own-thread"),
          ...named,
        }),
      )
      .optional()
      .meta({ description: "Connections that are not on the program's list." }),
  },
);
