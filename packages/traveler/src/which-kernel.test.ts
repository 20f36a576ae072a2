import { plainKernel } from "@bitwright/engine";
import { afterEach, describe, expect, it, vi } from "vitest";
import { demoWorkup } from "../../../tests/support/demo-workup.ts";
import { lifeStation } from "./stations/life-station.ts";
import { bandsStudy } from "./studies/bands-study.ts";
import { mapStudy } from "./studies/map-study.ts";
import { layoutStudy } from "./studies/solve-layout.ts";

const workup = demoWorkup("loop-hole");
const works = {
  "a workup": () => demoWorkup("house-well"),
  "a life": () => lifeStation(workup.inquiry, workup, { holes: 30 }),
  "a map": () => mapStudy(workup),
  bands: () => bandsStudy(workup, { samples: 12 }),
  "a layout search": () => layoutStudy(workup, { candidates: 150 }),
};

interface Host {
  readonly Module: new (code: Uint8Array) => object;
  readonly Instance: new (module: object) => { readonly exports: { engage(advance: number): void } };
}

/** The host's WebAssembly, telling how often it is instantiated. */
function counted(): { readonly host: Host; readonly made: () => number } {
  const { Module, Instance } = Reflect.get(globalThis, "WebAssembly") as Host;
  let made = 0;
  const Counting = class extends Instance {
    constructor(module: object) {
      super(module);
      made++;
    }
  };
  return { host: { Module, Instance: Counting }, made: () => made };
}

/** The two say the same: every number to 1e-12 of itself, all else exactly. */
function expectSame(one: unknown, other: unknown, where: string): void {
  if (typeof one === "number" && typeof other === "number" && Number.isFinite(one)) {
    expect(Math.abs(one - other), where).toBeLessThanOrEqual(1e-12 * Math.abs(one));
  } else if (one !== null && other !== null && typeof one === "object" && typeof other === "object") {
    expect(Object.keys(one), where).toEqual(Object.keys(other));
    for (const [key, value] of Object.entries(one)) expectSame(value, Reflect.get(other, key), `${where}.${key}`);
  } else expect(one, where).toEqual(other);
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe.each(Object.entries(works))("%s", (name, work) => {
  it("makes one compiled kernel and runs every loop on it", () => {
    const { host, made } = counted();
    vi.stubGlobal("WebAssembly", host);
    const plain = [vi.spyOn(plainKernel, "engage"), vi.spyOn(plainKernel, "edgeLoads")];
    work();
    expect(made()).toBe(1);
    for (const loop of plain) expect(loop).not.toHaveBeenCalled();
  });

  it("comes to the same where the host runs no WebAssembly", () => {
    const compiled = work();
    vi.stubGlobal("WebAssembly", undefined);
    const plain = vi.spyOn(plainKernel, "engage");
    expectSame(work(), compiled, name);
    expect(plain).toHaveBeenCalled();
  });
});
