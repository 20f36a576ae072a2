export { type CardPrint, type CardPrintOptions, cardPrint, setCard } from "./card-print.ts";
