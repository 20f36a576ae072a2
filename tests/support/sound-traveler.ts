/** A sound traveler as a person would write it: the invented job of the demo, all of its facts given. */
export function soundTraveler() {
  return {
    format: "bitwright-traveler",
    version: 1,
    job: { name: "Ridge Road house well", customer: "Quillback Drilling", shop: "Fernhollow Bit Works" },
    inquiry: {
      holes: [
        { name: "surface hole", diameter: "9 7/8 in", from: "0 ft", to: "45 ft", casingBore: "6.28 in" },
        { name: "open hole", diameter: "6 1/8 in", from: "45 ft", to: "300 ft" },
      ],
      rig: {
        name: "top-head rig",
        pullDown: "15 klbf",
        hoist: "30 klbf",
        topHeadWeight: "1,500 lbf",
        torque: "5000 ft-lbf",
        rotarySpeedMin: "20 rpm",
        rotarySpeedMax: "140 rpm",
        gaugeForceFactor: "7.5 lbf/psi",
        feedGaugeZero: "40 psi",
        drag: "200 lbf",
        enginePower: "180 hp",
      },
      pump: { name: "duplex", flow: "180 gpm", pressureRating: "300 psi", surfaceGear: "75 ft", lumpSize: "1/2 in" },
      pipe: {
        outsideDiameter: "3 1/2 in",
        bore: "2.764 in",
        weight: "13.3 lb/ft",
        jointLength: "20 ft",
        connection: "3-1/2 REG",
        subDiameter: "4 1/2 in",
        yieldStrength: "75 ksi",
      },
      collars: [{ outsideDiameter: "4 3/4 in", bore: "2 1/4 in", length: "30 ft", weight: "46.7 lb/ft" }],
      fluid: {
        kind: "bentonite",
        density: "8.6 ppg",
        plasticViscosity: "8 cP",
        yieldPoint: "8 lbf/100ft2",
        temperature: "60 °F",
      },
      waterLevel: "35 ft",
      presentTool: { kind: "roller", rate: "25 ft/h" },
      targets: { weight: "1000 lb/in", rotarySpeed: "90 rpm" },
    },
    ground: {
      source: "driller's log of the next well",
      beds: [
        { top: "0 ft", bottom: "38 ft", rock: "clay", strength: "20 psi" },
        { top: "38 ft", bottom: "45 ft", phrase: "chert gravel", strength: { low: "10 psi", high: "100 psi" } },
        { top: "45 ft", bottom: "180 ft", rock: "shale", strength: { low: "3 ksi", mid: "5 ksi", high: "8 ksi" } },
        { top: "180 ft", bottom: "300 ft", rock: "limestone", strength: "60 MPa" },
      ],
    },
    bit: {
      spec: {
        diameter: "6 1/8 in",
        cutter: "1308",
        wings: 5,
        cuttersPerWing: 3,
        ports: { count: 3, diameter: "1/2 in" },
      },
    },
    prices: {
      rig: "320 /h",
      fuel: "3.80 /gal",
      fuelFlow: "6 gal/h",
      trip: "1 h 15 min",
      connection: "3 min",
      other: "0.20 /ft",
      steelBody: "650",
      matrixBody: "1050",
      cutters: { "0808": 22, "1008": 22, "1308": 24, "1608": 38, "1908": 80 },
      pocket: 12,
      hardfacing: 140,
    },
  };
}
