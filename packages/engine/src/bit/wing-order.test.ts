import { describe, expect, it } from "vitest";
import { wingOrders, wingsOfStations } from "./wing-order.ts";

describe("wings taking turns", () => {
  it("in every order with the first wing first, or in even steps where wings are many", () => {
    expect(wingOrders(1)).toEqual([[0]]);
    expect(wingOrders(3)).toEqual([
      [0, 1, 2],
      [0, 2, 1],
    ]);
    expect(wingOrders(5).length).toBe(24);
    for (const order of wingOrders(8)) expect([...order].sort()).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(wingOrders(8).length).toBe(4);
  });

  it("start at the first of the order, and each wing takes what it holds", () => {
    expect(wingsOfStations({ order: [0, 2, 1], holds: [2, 2, 2], stations: 6 })).toEqual([0, 2, 1, 0, 2, 1]);
    // Wings 1 and 2 hold one each: they stop short of the centre.
    expect(wingsOfStations({ order: [0, 2, 1], holds: [2, 1, 1], stations: 4 })).toEqual([0, 2, 1, 0]);
  });

  it("refuse more stations than they hold", () => {
    expect(() => wingsOfStations({ order: [0, 1], holds: [1, 1], stations: 3 })).toThrow("stations must be at most 2");
  });
});
