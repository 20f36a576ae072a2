import { expect, it } from "vitest";
import { band } from "../quantity/index.ts";
import { rockById } from "./rock-table.ts";
import { shopRock } from "./shop-rock.ts";

it("sets what is given, keeps the rest, and says what was entered", () => {
  const sandstone = rockById("sandstone");
  const own = shopRock({
    like: sandstone,
    id: "hill-sandstone",
    name: "hill sandstone",
    properties: { ucs: band(2e7, 3e7, 4e7) },
    from: "lists.rocks[0]",
  });
  expect(own.ucs.mid).toBe(3e7);
  expect(own.sources.ucs).toEqual({ kind: "entered", cite: "lists.rocks[0]" });
  expect(own.cerchar).toEqual(sandstone.cerchar);
  expect(own.sources.cerchar).toEqual(sandstone.sources.cerchar);
  expect([own.id, own.name, own.family]).toEqual(["hill-sandstone", "hill sandstone", "clastic"]);
  expect(own.likeId).toBe("sandstone");
  expect(shopRock({ like: own, id: "second", properties: {}, from: "x" }).likeId).toBe("sandstone");
});

it("keeps id and name where it only sets properties over the table's", () => {
  expect(shopRock({ like: rockById("shale"), properties: {}, from: "x" }).id).toBe("shale");
});
