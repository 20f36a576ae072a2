/**
 * How the printed card is laid out, in the typesetter's language. All that is said comes in as data; no text of a job is
 * ever part of this source. It reads in grey: weight of letters, rules, marks and words carry everything.
 */
export const CARD_LAYOUT = String.raw`
#let card = json(bytes(sys.inputs.card))
#let qr = sys.inputs.at("qr", default: "")

#set document(title: "Driller's card: " + card.job, date: none)
#set text(font: "DejaVu Sans", stretch: 75%, fallback: false, size: card.size * 1pt, lang: "en", hyphenate: false)
#set par(leading: 0.42em, spacing: 0.5em)
#set page(
  paper: card.paper,
  margin: (x: 10mm, top: 8mm, bottom: 8mm + 3.6em),
  footer-descent: 0.5em,
  footer: [
    #line(length: 100%, stroke: 1.6pt)
    #v(-0.35em)
    #text(0.85em, card.standing)
    #v(0.45em)
    #grid(
      columns: (1fr, auto),
      column-gutter: 1em,
      [Read and signed: #box(width: 1fr, line(length: 100%, stroke: 0.8pt)) Date: #box(width: 6em, line(length: 100%, stroke: 0.8pt))],
      text(0.85em)[#card.program, page #context counter(page).display("1 of 1", both: true)],
    )
  ],
)

#let head(title) = block(
  above: 0.6em, below: 0.4em, width: 100%, stroke: (top: 1.6pt), inset: (top: 0.32em), sticky: true,
  strong(title),
)
#let alert(words) = block(
  above: 0.45em, below: 0.45em, width: 100%, stroke: 2pt, inset: 0.4em,
  grid(columns: (auto, 1fr), column-gutter: 0.5em, text(1.25em, strong("!")), strong(words)),
)
// Down the left side first.
#let halves(items, show-item) = {
  let half = calc.ceil(items.len() / 2)
  grid(
    columns: (1fr, 1fr), column-gutter: 1em,
    ..(items.slice(0, half), items.slice(half)).map(side => stack(spacing: 0.4em, ..side.map(show-item))),
  )
}
#let bullet(body) = grid(columns: (0.9em, 1fr), text(0.7em, baseline: -0.1em, "■"), body)

#grid(
  columns: if qr == "" { (1fr,) } else { (1fr, auto) },
  column-gutter: 1em,
  [
    #text(1.35em, strong[DRILLER'S CARD: #card.job]) \
    #if card.who != "" [For #card.who \ ]
    #strong[Hole #card.hole.] #card.bit
    #for words in card.alerts { alert(words) }
  ],
  ..if qr != "" {
    (align(center, stack(spacing: 1mm, image(bytes(qr), format: "svg", width: 25mm), text(7.5pt)[this card on a phone])),)
  },
)

#head[HOW TO RUN IT, BED BY BED]
#let wide = card.beds.heads.len()
#let titles(row) = row.map(title => text(0.8em, strong(title)))
// Many beds are set closer.
#let count = card.beds.rows.len()
#text(if count > 14 { 0.95em } else if count > 8 { 1.1em } else { 1.25em }, table(
  columns: range(wide).map(k => if k == 2 { 1fr } else { auto }),
  align: (x, y) => (if x == 2 { left } else { right }) + top,
  stroke: none,
  inset: (x: 0.28em, y: 0.2em),
  ..titles(card.beds.heads),
  ..card.beds.units.map(unit => text(0.7em, unit)),
  table.hline(stroke: 1.2pt),
  ..for bed in card.beds.rows {
    (strong(bed.from), strong(bed.to))
    if "instead" in bed {
      (table.cell(colspan: wide - 2, [#strong[✕ #bed.ground: NOT THIS BIT.] #bed.instead]),)
    } else {
      ([#if bed.care { strong("! ") }#bed.ground], ..bed.figures.map(figure => strong(figure)))
      for remark in bed.remarks {
        (table.cell(colspan: 2, []), table.cell(colspan: wide - 2, text(0.75em, [– #remark])))
      }
    }
    (table.hline(stroke: 0.4pt),)
  },
))
#text(0.9em, card.beds.legend)

// As many joints side by side as have room, each as wide as the widest, read down the left side first.
#let side-by-side(joints) = layout(room => {
  let pad = 0.25em
  let mark(act) = if act == "PUSH" { "▼ " } else if act == "HOLD" { "▲ " } else { "● " }
  let shown(row) = row.enumerate().map(((k, cell)) => if k == 3 { strong(mark(cell) + cell) } else if k == 0 or k > 3 { strong(cell) } else { cell })
  let heads = joints.heads.map(title => text(0.85em, title))
  let rows = joints.rows.map(shown)
  let widths = range(heads.len()).map(k => calc.max(..(heads, ..rows).map(row => measure(row.at(k)).width)) + 2 * pad.to-absolute())
  let own = widths.sum()
  let gap = 1.1em.to-absolute()
  let beside = calc.max(1, calc.min(rows.len(), calc.floor((room.width + gap) / (own + gap))))
  let high = calc.ceil(rows.len() / beside)
  let blocks = calc.ceil(rows.len() / high)
  grid(
    columns: range(blocks).map(_ => own), column-gutter: gap,
    ..range(blocks).map(k => table(
      columns: widths, stroke: none, inset: (x: pad, y: 0.18em),
      align: (x, y) => if x == 3 { left } else { right },
      ..heads, table.hline(stroke: 0.8pt),
      ..for row in rows.slice(k * high, calc.min(rows.len(), (k + 1) * high)) { (..row, table.hline(stroke: 0.3pt)) },
    )),
  )
})
#if card.joints.rows.len() > 0 {
  head(card.joints.title)
  // A long hole is read in more columns of smaller type.
  let many = card.joints.rows.len()
  text(if many > 40 { 0.92em } else if many > 20 { 1em } else { 1.1em }, side-by-side(card.joints))
  if card.joints.note != "" { text(0.9em, card.joints.note) }
}

#if card.start != "" { head("BREAK-IN"); text(0.95em, card.start) }
#if card.gear != "" { block(above: 0.5em, strong(card.gear)) }

#head[STOP AND LOOK WHEN]
#halves(card.signs, sign => bullet[#strong(sign.sign): #sign.act])

#if card.watch.len() > 0 {
  head("WATCH")
  text(0.95em, stack(spacing: 0.4em, ..card.watch.map(words => bullet(words))))
}

#head[SAFETY]
#text(calc.max(7pt, card.size * 0.78pt))[
  #halves(card.safety, caution => [#strong(caution.topic): #caution.text])
  #strong(card.deferral)
]
#if card.leftOut != "" { block(above: 0.6em, stroke: 0.8pt, inset: 0.3em, width: 100%, text(0.9em, card.leftOut)) }
`;
