import { section, text } from "../plain-field.ts";

/** Whose job it is. */
export const jobSchema = section("Whose job it is; printed at the head of every sheet.", {
  name: text("Name of the job.", "Ridge Road house well"),
  number: text("Number of the job in the shop's own book.", "2107").optional(),
  customer: text("Who the bit is for.", "Quillback Drilling").optional(),
  shop: text("Who makes or rebuilds the bit.", "Fernhollow Bit Works").optional(),
  date: text("Date of the inquiry, as it is to be printed.", "2025-03-14").optional(),
  notes: text("Anything that the other fields do not hold.").optional(),
  currency: text("Currency of every price in this document.", "USD").optional(),
});
