// Written by `npm run generate`; do not edit.
/** What the schemas say about one place: the keys known there, the quantity, an example as typed. */
export interface ShapeFact {
  readonly keys?: readonly string[]
  readonly quantity?: string
  readonly ref?: string
  readonly type?: readonly string[]
  readonly only?: readonly string[]
  readonly title?: string
  /** Definitions by the value of the key kind. */
  readonly kinds?: Readonly<Record<string, string>>
  /** The definition where choices is among the keys. */
  readonly withChoices?: string
  readonly example?: string
}
/** Facts by place in the schemas. */
export const shapeFacts: Readonly<Record<string, ShapeFact>> = {
 "#/$defs/spindle": {
  "keys": [
   "fastest",
   "slowest",
   "power"
  ],
  "type": [
   "object"
  ],
  "title": "Spindle"
 },
 "#/$defs/spindle/properties/fastest": {
  "quantity": "rotational speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Fastest",
  "example": "10000 rpm"
 },
 "#/$defs/spindle/properties/slowest": {
  "quantity": "rotational speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Slowest",
  "example": "200 rpm"
 },
 "#/$defs/spindle/properties/power": {
  "quantity": "power",
  "type": [
   "string",
   "number"
  ],
  "title": "Power",
  "example": "500 W"
 },
 "#/$defs/carrier": {
  "keys": [
   "days",
   "off"
  ],
  "type": [
   "object"
  ],
  "title": "Carrier"
 },
 "#/$defs/carrier/properties/days": {
  "type": [
   "string"
  ],
  "title": "Days",
  "example": "mon-sat"
 },
 "#/$defs/carrier/properties/off": {
  "type": [
   "array"
  ],
  "title": "Days off",
  "example": "[2026-04-03, \"2026-04-06..2026-04-10\"]"
 },
 "#/$defs/carrier/properties/off/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/finished": {
  "keys": [
   "volume",
   "area",
   "box"
  ],
  "type": [
   "object"
  ],
  "title": "Finished"
 },
 "#/$defs/finished/properties/volume": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Volume",
  "example": "21 cm3"
 },
 "#/$defs/finished/properties/area": {
  "quantity": "area",
  "type": [
   "string",
   "number"
  ],
  "title": "Area",
  "example": "96 cm2"
 },
 "#/$defs/finished/properties/box": {
  "type": [
   "string"
  ],
  "title": "Box",
  "example": "60 x 60 x 12 mm"
 },
 "#/$defs/made": {
  "keys": [
   "by",
   "trace",
   "space",
   "hole"
  ],
  "type": [
   "object"
  ],
  "title": "Made"
 },
 "#/$defs/made/properties/by": {
  "type": [
   "string"
  ],
  "title": "By",
  "only": [
   "isolation milling",
   "etching",
   "board house",
   "board house, 0.127 mm",
   "board house, fine"
  ],
  "example": "isolation milling"
 },
 "#/$defs/made/properties/trace": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Trace",
  "example": "0.2 mm"
 },
 "#/$defs/made/properties/space": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Space",
  "example": "0.2 mm"
 },
 "#/$defs/made/properties/hole": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Hole",
  "example": "0.3 mm"
 },
 "#/$defs/panel": {
  "keys": [
   "size",
   "rails",
   "gap",
   "score"
  ],
  "type": [
   "object"
  ],
  "title": "Panel"
 },
 "#/$defs/panel/properties/size": {
  "type": [
   "string"
  ],
  "title": "Size",
  "example": "100 x 80 mm"
 },
 "#/$defs/panel/properties/rails": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Rails",
  "example": "5 mm"
 },
 "#/$defs/panel/properties/gap": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Gap",
  "example": "2 mm"
 },
 "#/$defs/panel/properties/score": {
  "type": [
   "boolean"
  ],
  "title": "Scored",
  "example": "true"
 },
 "#/$defs/solder": {
  "keys": [
   "time",
   "by",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "machine"
  ],
  "type": [
   "object"
  ],
  "title": "Soldering"
 },
 "#/$defs/solder/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/solder/properties/by": {
  "type": [
   "string"
  ],
  "title": "By",
  "only": [
   "hand",
   "paste"
  ],
  "example": "hand"
 },
 "#/$defs/solder/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/solder/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/solder/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/solder/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/solder/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/solder/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/solder/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/solder/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/solder/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/solder/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "hot plate"
 },
 "#/$defs/device": {
  "keys": [
   "name",
   "revision",
   "description",
   "qty",
   "currency",
   "general",
   "start",
   "wanted",
   "assembled"
  ],
  "type": [
   "object"
  ],
  "title": "Device"
 },
 "#/$defs/device/properties/name": {
  "type": [
   "string"
  ],
  "title": "Name",
  "example": "Cuvette stirrer"
 },
 "#/$defs/device/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/device/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "stirs one cuvette from below"
 },
 "#/$defs/device/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "2"
 },
 "#/$defs/device/properties/currency": {
  "type": [
   "string"
  ],
  "title": "Currency",
  "example": "EUR"
 },
 "#/$defs/device/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/device/properties/start": {
  "type": [
   "string"
  ],
  "title": "Start",
  "example": "2026-02-02"
 },
 "#/$defs/device/properties/wanted": {
  "type": [
   "string"
  ],
  "title": "Wanted",
  "example": "2026-03-20"
 },
 "#/$defs/device/properties/assembled": {
  "type": [
   "string"
  ],
  "title": "Assembled model",
  "example": "models/device.3mf"
 },
 "#/$defs/limits": {
  "keys": [
   "cash",
   "mass",
   "envelope"
  ],
  "type": [
   "object"
  ],
  "title": "Limits"
 },
 "#/$defs/limits/properties/cash": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Cash",
  "example": "420 EUR"
 },
 "#/$defs/limits/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "180 g"
 },
 "#/$defs/limits/properties/envelope": {
  "type": [
   "string"
  ],
  "title": "Envelope",
  "example": "60 x 60 x 45 mm"
 },
 "#/$defs/mainAssembly": {
  "keys": [
   "openings",
   "steps",
   "ground"
  ],
  "type": [
   "object"
  ],
  "title": "Assembly"
 },
 "#/$defs/mainAssembly/properties/openings": {
  "ref": "#/$defs/openings"
 },
 "#/$defs/mainAssembly/properties/steps": {
  "ref": "#/$defs/steps"
 },
 "#/$defs/mainAssembly/properties/ground": {
  "type": [
   "string"
  ],
  "title": "Ground",
  "example": "base"
 },
 "#/$defs/link": {
  "keys": [
   "step",
   "lag",
   "within"
  ],
  "type": [
   "object"
  ],
  "title": "Link"
 },
 "#/$defs/link/properties/step": {
  "type": [
   "string"
  ],
  "title": "Step",
  "example": "bond magnet"
 },
 "#/$defs/link/properties/lag": {
  "quantity": "time or working days",
  "type": [
   "string",
   "number"
  ],
  "title": "Lag",
  "example": "2 h"
 },
 "#/$defs/link/properties/within": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Longest wait",
  "example": "10 min"
 },
 "#/$defs/offer": {
  "keys": [
   "vendor",
   "price",
   "per",
   "area price",
   "lead",
   "pack",
   "moq",
   "minimum",
   "code",
   "url",
   "cart",
   "needs",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Offer"
 },
 "#/$defs/offer/properties/vendor": {
  "type": [
   "string"
  ],
  "title": "Vendor",
  "example": "magnets"
 },
 "#/$defs/offer/properties/price": {
  "quantity": "money",
  "type": [
   "string",
   "number",
   "object"
  ],
  "title": "Price",
  "example": "{1: 0.62, 25: 0.41}"
 },
 "#/$defs/offer/properties/price/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/offer/properties/per": {
  "type": [
   "string"
  ],
  "title": "Per",
  "only": [
   "piece",
   "panel"
  ],
  "example": "panel"
 },
 "#/$defs/offer/properties/area price": {
  "quantity": "money",
  "type": [
   "object"
  ],
  "title": "Price by area",
  "example": "{50 cm2: {5: 2.6, 10: 1.9}, 100 cm2: 4.1}"
 },
 "#/$defs/offer/properties/area price/additionalProperties": {
  "type": [
   "string",
   "number",
   "object"
  ]
 },
 "#/$defs/offer/properties/area price/additionalProperties/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/offer/properties/lead": {
  "quantity": "working days",
  "type": [
   "string",
   "number"
  ],
  "title": "Lead time",
  "example": "2..3..5 wd"
 },
 "#/$defs/offer/properties/pack": {
  "type": [
   "integer"
  ],
  "title": "Pack",
  "example": "5"
 },
 "#/$defs/offer/properties/moq": {
  "type": [
   "integer"
  ],
  "title": "Least order",
  "example": "10"
 },
 "#/$defs/offer/properties/minimum": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Minimum charge",
  "example": "35"
 },
 "#/$defs/offer/properties/code": {
  "type": [
   "string"
  ],
  "title": "Order code",
  "example": "MAG-D4-2"
 },
 "#/$defs/offer/properties/url": {
  "type": [
   "string"
  ],
  "title": "Page",
  "example": "https://example.org/mag-d4-2"
 },
 "#/$defs/offer/properties/cart": {
  "type": [
   "string"
  ],
  "title": "Cart",
  "example": "second order"
 },
 "#/$defs/offer/properties/needs": {
  "type": [
   "string",
   "array"
  ],
  "title": "Waits for",
  "example": "[drawing]"
 },
 "#/$defs/offer/properties/needs/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/offer/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "ask for a certificate"
 },
 "#/$defs/stock": {
  "keys": [
   "bar",
   "length",
   "plate",
   "block",
   "kerf",
   "facing",
   "offers"
  ],
  "type": [
   "object"
  ],
  "title": "Stock"
 },
 "#/$defs/stock/properties/bar": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Bar",
  "example": "20 mm"
 },
 "#/$defs/stock/properties/length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Length",
  "example": "18 mm"
 },
 "#/$defs/stock/properties/plate": {
  "type": [
   "string"
  ],
  "title": "Plate",
  "example": "65 x 65 x 15 mm"
 },
 "#/$defs/stock/properties/block": {
  "type": [
   "string"
  ],
  "title": "Block",
  "example": "40 x 40 x 20 mm"
 },
 "#/$defs/stock/properties/kerf": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Kerf",
  "example": "2 mm"
 },
 "#/$defs/stock/properties/facing": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Facing",
  "example": "1 mm"
 },
 "#/$defs/stock/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: metals, price: 4.2, lead: 2 wd}]"
 },
 "#/$defs/stock/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/form": {
  "keys": [
   "bar",
   "length",
   "plate",
   "volume",
   "mass",
   "have",
   "worth",
   "offers"
  ],
  "type": [
   "object"
  ],
  "title": "Form of a material"
 },
 "#/$defs/form/properties/bar": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Bar",
  "example": "20 mm"
 },
 "#/$defs/form/properties/length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Bar length",
  "example": "500 mm"
 },
 "#/$defs/form/properties/plate": {
  "type": [
   "string"
  ],
  "title": "Plate",
  "example": "200 x 100 x 15 mm"
 },
 "#/$defs/form/properties/volume": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Volume",
  "example": "500 mL"
 },
 "#/$defs/form/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "1 kg"
 },
 "#/$defs/form/properties/have": {
  "type": [
   "number",
   "string"
  ],
  "title": "Have",
  "example": "240 mm"
 },
 "#/$defs/form/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "6.5"
 },
 "#/$defs/form/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: metals, price: 9.8, lead: 2 wd}]"
 },
 "#/$defs/form/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/placements": {
  "keys": [
   "file",
   "reference",
   "value",
   "package",
   "part",
   "separator",
   "series"
  ],
  "type": [
   "object"
  ],
  "title": "Placements"
 },
 "#/$defs/placements/properties/file": {
  "type": [
   "string"
  ],
  "title": "File",
  "example": "bridge.csv"
 },
 "#/$defs/placements/properties/reference": {
  "type": [
   "string"
  ],
  "title": "Column reference",
  "example": "Ref"
 },
 "#/$defs/placements/properties/value": {
  "type": [
   "string"
  ],
  "title": "Column value",
  "example": "Value"
 },
 "#/$defs/placements/properties/package": {
  "type": [
   "string"
  ],
  "title": "Column package",
  "example": "Package"
 },
 "#/$defs/placements/properties/part": {
  "type": [
   "string"
  ],
  "title": "Column part",
  "example": "Part"
 },
 "#/$defs/placements/properties/separator": {
  "type": [
   "string"
  ],
  "title": "Separator",
  "only": [
   "comma",
   "semicolon",
   "tab"
  ],
  "example": "semicolon"
 },
 "#/$defs/placements/properties/series": {
  "type": [
   "string"
  ],
  "title": "Series",
  "only": [
   "E3",
   "E6",
   "E12",
   "E24",
   "E48",
   "E96",
   "E192"
  ],
  "example": "E24"
 },
 "#/$defs/traceCurrent": {
  "keys": [
   "what",
   "amps",
   "width",
   "copper",
   "rise",
   "layer"
  ],
  "type": [
   "object"
  ],
  "title": "Trace current"
 },
 "#/$defs/traceCurrent/properties/what": {
  "type": [
   "string"
  ],
  "title": "What",
  "example": "motor"
 },
 "#/$defs/traceCurrent/properties/amps": {
  "quantity": "current",
  "type": [
   "string",
   "number"
  ],
  "title": "Current",
  "example": "2 A"
 },
 "#/$defs/traceCurrent/properties/width": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Width",
  "example": "1 mm"
 },
 "#/$defs/traceCurrent/properties/copper": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Copper",
  "example": "35 um"
 },
 "#/$defs/traceCurrent/properties/rise": {
  "quantity": "temperature",
  "type": [
   "string",
   "number"
  ],
  "title": "Rise",
  "example": "10 K"
 },
 "#/$defs/traceCurrent/properties/layer": {
  "type": [
   "string"
  ],
  "title": "Layer",
  "only": [
   "external",
   "internal"
  ],
  "example": "external"
 },
 "#/$defs/meshPlace": {
  "keys": [
   "at",
   "turn"
  ],
  "type": [
   "object"
  ],
  "title": "Place of a mesh"
 },
 "#/$defs/meshPlace/properties/at": {
  "type": [
   "array"
  ],
  "title": "At",
  "example": "[12 mm, 0 mm, \"-4.5 mm\"]"
 },
 "#/$defs/meshPlace/properties/at/items": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/meshPlace/properties/turn": {
  "type": [
   "array"
  ],
  "title": "Turn",
  "example": "[0 deg, 90 deg, 0 deg]"
 },
 "#/$defs/meshPlace/properties/turn/items": {
  "quantity": "angle",
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/person": {
  "keys": [
   "hours",
   "off",
   "extra",
   "rate",
   "setup",
   "clean-up",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Person"
 },
 "#/$defs/person/properties/hours": {
  "type": [
   "object"
  ],
  "title": "Hours",
  "example": "{mon-thu: \"19:30-22:30\", sat: [\"09:00-12:00\", \"13:00-17:00\"]}"
 },
 "#/$defs/person/properties/hours/additionalProperties": {
  "type": [
   "string",
   "array"
  ]
 },
 "#/$defs/person/properties/hours/additionalProperties/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/person/properties/off": {
  "type": [
   "array"
  ],
  "title": "Days off",
  "example": "[2026-04-03, \"2026-04-06..2026-04-10\"]"
 },
 "#/$defs/person/properties/off/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/person/properties/extra": {
  "type": [
   "object"
  ],
  "title": "Extra hours",
  "example": "{2026-02-21: \"10:00-16:00\"}"
 },
 "#/$defs/person/properties/extra/additionalProperties": {
  "type": [
   "string",
   "array"
  ]
 },
 "#/$defs/person/properties/extra/additionalProperties/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/person/properties/rate": {
  "quantity": "money per time",
  "type": [
   "string",
   "number"
  ],
  "title": "Rate",
  "example": "0 EUR/h"
 },
 "#/$defs/person/properties/setup": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Setting up",
  "example": "10 min"
 },
 "#/$defs/person/properties/clean-up": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Cleaning up",
  "example": "10 min"
 },
 "#/$defs/person/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "no mill alone"
 },
 "#/$defs/machine": {
  "keys": [
   "hours",
   "off",
   "extra",
   "rate",
   "capacity",
   "users",
   "prints",
   "deposits",
   "bed",
   "gap",
   "layer",
   "exposure",
   "bottom exposure",
   "bottom layers",
   "lift time",
   "resin lost",
   "flow",
   "line width",
   "print speed",
   "filament",
   "heat",
   "travel",
   "rapid",
   "fastest feed",
   "tool change",
   "headroom",
   "spindle",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Machine"
 },
 "#/$defs/machine/properties/hours": {
  "type": [
   "object"
  ],
  "title": "Hours",
  "example": "{mon-thu: \"19:30-22:30\", sat: [\"09:00-12:00\", \"13:00-17:00\"]}"
 },
 "#/$defs/machine/properties/hours/additionalProperties": {
  "type": [
   "string",
   "array"
  ]
 },
 "#/$defs/machine/properties/hours/additionalProperties/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machine/properties/off": {
  "type": [
   "array"
  ],
  "title": "Days off",
  "example": "[2026-04-03, \"2026-04-06..2026-04-10\"]"
 },
 "#/$defs/machine/properties/off/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machine/properties/extra": {
  "type": [
   "object"
  ],
  "title": "Extra hours",
  "example": "{2026-02-21: \"10:00-16:00\"}"
 },
 "#/$defs/machine/properties/extra/additionalProperties": {
  "type": [
   "string",
   "array"
  ]
 },
 "#/$defs/machine/properties/extra/additionalProperties/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machine/properties/rate": {
  "quantity": "money per time",
  "type": [
   "string",
   "number"
  ],
  "title": "Rate",
  "example": "6 EUR/h"
 },
 "#/$defs/machine/properties/capacity": {
  "type": [
   "integer"
  ],
  "title": "Capacity",
  "example": "4"
 },
 "#/$defs/machine/properties/users": {
  "type": [
   "string",
   "array"
  ],
  "title": "Users",
  "example": "[ana]"
 },
 "#/$defs/machine/properties/users/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machine/properties/prints": {
  "type": [
   "string"
  ],
  "title": "Prints",
  "only": [
   "vat",
   "filament"
  ],
  "example": "vat"
 },
 "#/$defs/machine/properties/deposits": {
  "quantity": "volume per time",
  "type": [
   "string",
   "number"
  ],
  "title": "Deposits",
  "example": "12 cm3/h"
 },
 "#/$defs/machine/properties/bed": {
  "type": [
   "string"
  ],
  "title": "Bed",
  "example": "120 x 68 x 150 mm"
 },
 "#/$defs/machine/properties/gap": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Gap",
  "example": "2 mm"
 },
 "#/$defs/machine/properties/layer": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Layer",
  "example": "50 um"
 },
 "#/$defs/machine/properties/exposure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Exposure",
  "example": "2.4 s"
 },
 "#/$defs/machine/properties/bottom exposure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Bottom exposure",
  "example": "30 s"
 },
 "#/$defs/machine/properties/bottom layers": {
  "type": [
   "integer"
  ],
  "title": "Bottom layers",
  "example": "5"
 },
 "#/$defs/machine/properties/lift time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Lift",
  "example": "6.5 s"
 },
 "#/$defs/machine/properties/resin lost": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Resin lost",
  "example": "5 cm3"
 },
 "#/$defs/machine/properties/flow": {
  "quantity": "volume per time",
  "type": [
   "string",
   "number"
  ],
  "title": "Flow",
  "example": "11 mm3/s"
 },
 "#/$defs/machine/properties/line width": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Line width",
  "example": "0.45 mm"
 },
 "#/$defs/machine/properties/print speed": {
  "quantity": "speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Print speed",
  "example": "80 mm/s"
 },
 "#/$defs/machine/properties/filament": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Filament",
  "example": "1.75 mm"
 },
 "#/$defs/machine/properties/heat": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Heating",
  "example": "4 min"
 },
 "#/$defs/machine/properties/travel": {
  "type": [
   "string"
  ],
  "title": "Travel",
  "example": "250 x 150 x 200 mm"
 },
 "#/$defs/machine/properties/rapid": {
  "quantity": "speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Rapid",
  "example": "2000 mm/min"
 },
 "#/$defs/machine/properties/fastest feed": {
  "quantity": "speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Fastest feed",
  "example": "1000 mm/min"
 },
 "#/$defs/machine/properties/tool change": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Tool change",
  "example": "2 min"
 },
 "#/$defs/machine/properties/headroom": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Headroom",
  "example": "300 mm"
 },
 "#/$defs/machine/properties/spindle": {
  "ref": "#/$defs/spindle"
 },
 "#/$defs/machine/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "\"noisy: not after 22:00\""
 },
 "#/$defs/tool": {
  "keys": [
   "qty",
   "diameter",
   "reach",
   "from",
   "until",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Tool"
 },
 "#/$defs/tool/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "1"
 },
 "#/$defs/tool/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "4 mm"
 },
 "#/$defs/tool/properties/reach": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Reach",
  "example": "25 mm"
 },
 "#/$defs/tool/properties/from": {
  "type": [
   "string"
  ],
  "title": "From",
  "example": "2026-02-10"
 },
 "#/$defs/tool/properties/until": {
  "type": [
   "string"
  ],
  "title": "Until",
  "example": "2026-03-01"
 },
 "#/$defs/tool/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "borrowed"
 },
 "#/$defs/cutter": {
  "keys": [
   "diameter",
   "flutes",
   "reach",
   "flute length",
   "stick-out",
   "point",
   "corner radius",
   "chip",
   "cutting speed",
   "holds",
   "thread",
   "pitch",
   "tool",
   "life",
   "worth",
   "have",
   "offers",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Cutter"
 },
 "#/$defs/cutter/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "3 mm"
 },
 "#/$defs/cutter/properties/flutes": {
  "type": [
   "integer"
  ],
  "title": "Flutes",
  "example": "2"
 },
 "#/$defs/cutter/properties/reach": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Reach",
  "example": "12 mm"
 },
 "#/$defs/cutter/properties/flute length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Flute length",
  "example": "9 mm"
 },
 "#/$defs/cutter/properties/stick-out": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Stick-out",
  "example": "28 mm"
 },
 "#/$defs/cutter/properties/point": {
  "quantity": "angle",
  "type": [
   "string",
   "number"
  ],
  "title": "Point angle",
  "example": "118 deg"
 },
 "#/$defs/cutter/properties/corner radius": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Corner radius",
  "example": "0.2 mm"
 },
 "#/$defs/cutter/properties/chip": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Chip load",
  "example": "0.02 mm"
 },
 "#/$defs/cutter/properties/cutting speed": {
  "quantity": "speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Cutting speed",
  "example": "120 m/min"
 },
 "#/$defs/cutter/properties/holds": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Holds",
  "example": "15 um"
 },
 "#/$defs/cutter/properties/thread": {
  "type": [
   "string"
  ],
  "title": "Thread",
  "example": "M3"
 },
 "#/$defs/cutter/properties/pitch": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Pitch",
  "example": "1.5 mm"
 },
 "#/$defs/cutter/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Made of",
  "only": [
   "carbide",
   "hss"
  ],
  "example": "carbide"
 },
 "#/$defs/cutter/properties/life": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Life",
  "example": "5 h"
 },
 "#/$defs/cutter/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "14"
 },
 "#/$defs/cutter/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "1"
 },
 "#/$defs/cutter/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: bearings, price: 3.1, lead: 2 wd}]"
 },
 "#/$defs/cutter/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/cutter/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "for aluminium only"
 },
 "#/$defs/material": {
  "keys": [
   "density",
   "like",
   "kerf",
   "grip",
   "forms",
   "caution",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Material"
 },
 "#/$defs/material/properties/density": {
  "quantity": "density",
  "type": [
   "string",
   "number"
  ],
  "title": "Density",
  "example": "2.7 g/cm3"
 },
 "#/$defs/material/properties/like": {
  "type": [
   "string"
  ],
  "title": "Like",
  "example": "EN AW-6082"
 },
 "#/$defs/material/properties/kerf": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Kerf",
  "example": "1.5 mm"
 },
 "#/$defs/material/properties/grip": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Grip",
  "example": "15 mm"
 },
 "#/$defs/material/properties/forms": {
  "type": [
   "array"
  ],
  "title": "Forms",
  "example": "[{bar: 20 mm, length: 500 mm}]"
 },
 "#/$defs/material/properties/forms/items": {
  "ref": "#/$defs/form"
 },
 "#/$defs/material/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/material/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/material/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "keep dry"
 },
 "#/$defs/vendor": {
  "keys": [
   "days",
   "off",
   "cutoff",
   "post",
   "transit",
   "carrier",
   "currency",
   "freight",
   "free over",
   "minimum order",
   "clearance",
   "duty",
   "tax",
   "order",
   "receive",
   "url",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Vendor"
 },
 "#/$defs/vendor/properties/days": {
  "type": [
   "string"
  ],
  "title": "Days",
  "example": "mon-fri"
 },
 "#/$defs/vendor/properties/off": {
  "type": [
   "array"
  ],
  "title": "Days off",
  "example": "[2026-04-03, \"2026-04-06..2026-04-10\"]"
 },
 "#/$defs/vendor/properties/off/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/vendor/properties/cutoff": {
  "type": [
   "string"
  ],
  "title": "Cut-off",
  "example": "\"12:00\""
 },
 "#/$defs/vendor/properties/post": {
  "type": [
   "string"
  ],
  "title": "Post",
  "example": "\"18:00\""
 },
 "#/$defs/vendor/properties/transit": {
  "quantity": "working days",
  "type": [
   "string",
   "number"
  ],
  "title": "Transit",
  "example": "2..3..6 wd"
 },
 "#/$defs/vendor/properties/carrier": {
  "ref": "#/$defs/carrier"
 },
 "#/$defs/vendor/properties/currency": {
  "type": [
   "string"
  ],
  "title": "Currency",
  "example": "USD"
 },
 "#/$defs/vendor/properties/freight": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Freight",
  "example": "9"
 },
 "#/$defs/vendor/properties/free over": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Free over",
  "example": "80"
 },
 "#/$defs/vendor/properties/minimum order": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Minimum order",
  "example": "25"
 },
 "#/$defs/vendor/properties/clearance": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Clearance",
  "example": "12"
 },
 "#/$defs/vendor/properties/duty": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Duty",
  "example": "2.7 %"
 },
 "#/$defs/vendor/properties/tax": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Tax",
  "example": "19 %"
 },
 "#/$defs/vendor/properties/order": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Ordering",
  "example": "15 min"
 },
 "#/$defs/vendor/properties/receive": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Receiving check",
  "example": "10 min"
 },
 "#/$defs/vendor/properties/url": {
  "type": [
   "string"
  ],
  "title": "Page",
  "example": "https://example.org"
 },
 "#/$defs/vendor/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "closed in August"
 },
 "#/$defs/plate": {
  "keys": [
   "machine",
   "material",
   "time",
   "load",
   "unload",
   "wash",
   "dry",
   "cure",
   "attention",
   "after",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Plate"
 },
 "#/$defs/plate/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "printer"
 },
 "#/$defs/plate/properties/material": {
  "type": [
   "string"
  ],
  "title": "Material",
  "example": "al-6082"
 },
 "#/$defs/plate/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "4 h 10 min"
 },
 "#/$defs/plate/properties/load": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/plate/properties/unload": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "5 min"
 },
 "#/$defs/plate/properties/wash": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/plate/properties/dry": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "30 min"
 },
 "#/$defs/plate/properties/cure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "20 min"
 },
 "#/$defs/plate/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "none"
 },
 "#/$defs/plate/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/plate/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/plate/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/plate/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "guard upright"
 },
 "#/$defs/work": {
  "keys": [
   "time",
   "after",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "machine",
   "tool",
   "needs",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Work"
 },
 "#/$defs/work/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "3..5..10 h"
 },
 "#/$defs/work/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/work/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/work/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/work/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/work/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/work/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/work/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/work/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/work/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/work/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "bench"
 },
 "#/$defs/work/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "logic analyser"
 },
 "#/$defs/work/properties/needs": {
  "type": [
   "string",
   "array"
  ],
  "title": "Needs",
  "example": "[board]"
 },
 "#/$defs/work/properties/needs/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/work/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "flash a test pattern first"
 },
 "#/$defs/part": {
  "type": [
   "object"
  ],
  "title": "Part",
  "withChoices": "#/$defs/choicePart",
  "kinds": {
   "machined": "#/$defs/machined",
   "printed": "#/$defs/printed",
   "board": "#/$defs/board",
   "bought": "#/$defs/bought",
   "assembly": "#/$defs/assembly"
  }
 },
 "#/$defs/part/then": {
  "ref": "#/$defs/choicePart"
 },
 "#/$defs/part/else": {
  "type": [
   "object"
  ],
  "kinds": {
   "machined": "#/$defs/machined",
   "printed": "#/$defs/printed",
   "board": "#/$defs/board",
   "bought": "#/$defs/bought",
   "assembly": "#/$defs/assembly"
  }
 },
 "#/$defs/part/else/oneOf/0": {
  "ref": "#/$defs/machined"
 },
 "#/$defs/part/else/oneOf/1": {
  "ref": "#/$defs/printed"
 },
 "#/$defs/part/else/oneOf/2": {
  "ref": "#/$defs/board"
 },
 "#/$defs/part/else/oneOf/3": {
  "ref": "#/$defs/bought"
 },
 "#/$defs/part/else/oneOf/4": {
  "ref": "#/$defs/assembly"
 },
 "#/$defs/choicePart": {
  "keys": [
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "general",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "choices"
  ],
  "type": [
   "object"
  ],
  "title": "Part with choices"
 },
 "#/$defs/choicePart/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/choicePart/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/choicePart/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/choicePart/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/choicePart/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/choicePart/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/choicePart/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/choicePart/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/choicePart/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/choicePart/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/choicePart/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/choicePart/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/choicePart/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/choicePart/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/choicePart/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/choicePart/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/choicePart/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/choicePart/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/choicePart/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/choicePart/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/choicePart/properties/choices": {
  "type": [
   "object"
  ],
  "title": "Choices",
  "example": "{buy: {kind: bought, offers: [{vendor: hubs, price: 18, lead: 3 wd}]}}"
 },
 "#/$defs/choicePart/properties/choices/additionalProperties": {
  "type": [
   "object"
  ],
  "kinds": {
   "machined": "#/$defs/machinedWay",
   "printed": "#/$defs/printedWay",
   "board": "#/$defs/boardWay",
   "bought": "#/$defs/boughtWay",
   "assembly": "#/$defs/assemblyWay"
  }
 },
 "#/$defs/choicePart/properties/choices/additionalProperties/oneOf/0": {
  "ref": "#/$defs/machinedWay"
 },
 "#/$defs/choicePart/properties/choices/additionalProperties/oneOf/1": {
  "ref": "#/$defs/printedWay"
 },
 "#/$defs/choicePart/properties/choices/additionalProperties/oneOf/2": {
  "ref": "#/$defs/boardWay"
 },
 "#/$defs/choicePart/properties/choices/additionalProperties/oneOf/3": {
  "ref": "#/$defs/boughtWay"
 },
 "#/$defs/choicePart/properties/choices/additionalProperties/oneOf/4": {
  "ref": "#/$defs/assemblyWay"
 },
 "#/$defs/machined": {
  "keys": [
   "kind",
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "general",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "material",
   "stock",
   "lot",
   "features",
   "model",
   "place",
   "finished",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Machined part"
 },
 "#/$defs/machined/properties/kind": {
  "only": [
   "machined"
  ],
  "title": "Kind",
  "example": "machined"
 },
 "#/$defs/machined/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/machined/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/machined/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/machined/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/machined/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/machined/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/machined/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/machined/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/machined/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/machined/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/machined/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/machined/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/machined/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/machined/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/machined/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/machined/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machined/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/machined/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/machined/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/machined/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/machined/properties/material": {
  "type": [
   "string"
  ],
  "title": "Material",
  "example": "al-6082"
 },
 "#/$defs/machined/properties/stock": {
  "ref": "#/$defs/stock"
 },
 "#/$defs/machined/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/machined/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/machined/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/machined/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/machined/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/machined/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/machined/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/machined/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/machined/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/machined/properties/finished": {
  "ref": "#/$defs/finished"
 },
 "#/$defs/machined/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/machined/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/machinedWay": {
  "keys": [
   "kind",
   "material",
   "stock",
   "lot",
   "features",
   "model",
   "place",
   "finished",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Machined part"
 },
 "#/$defs/machinedWay/properties/kind": {
  "only": [
   "machined"
  ],
  "title": "Kind",
  "example": "machined"
 },
 "#/$defs/machinedWay/properties/material": {
  "type": [
   "string"
  ],
  "title": "Material",
  "example": "al-6082"
 },
 "#/$defs/machinedWay/properties/stock": {
  "ref": "#/$defs/stock"
 },
 "#/$defs/machinedWay/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/machinedWay/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/machinedWay/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/machinedWay/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/machinedWay/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/machinedWay/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/machinedWay/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/machinedWay/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/machinedWay/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/machinedWay/properties/finished": {
  "ref": "#/$defs/finished"
 },
 "#/$defs/machinedWay/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/machinedWay/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/printed": {
  "keys": [
   "kind",
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "general",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "machine",
   "material",
   "volume",
   "time",
   "plate",
   "load",
   "unload",
   "wash",
   "dry",
   "cure",
   "attention",
   "layer",
   "height",
   "footprint",
   "supports",
   "infill",
   "walls",
   "wall",
   "hole",
   "shrink",
   "lot",
   "features",
   "model",
   "place",
   "finished",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Printed part"
 },
 "#/$defs/printed/properties/kind": {
  "only": [
   "printed"
  ],
  "title": "Kind",
  "example": "printed"
 },
 "#/$defs/printed/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/printed/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/printed/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/printed/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/printed/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/printed/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/printed/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/printed/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/printed/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/printed/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/printed/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/printed/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/printed/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/printed/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/printed/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/printed/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/printed/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/printed/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/printed/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/printed/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/printed/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "printer"
 },
 "#/$defs/printed/properties/material": {
  "type": [
   "string"
  ],
  "title": "Material",
  "example": "al-6082"
 },
 "#/$defs/printed/properties/volume": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Volume",
  "example": "8.5 cm3"
 },
 "#/$defs/printed/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "2 h 20 min"
 },
 "#/$defs/printed/properties/plate": {
  "type": [
   "string"
  ],
  "title": "Plate",
  "example": "p1"
 },
 "#/$defs/printed/properties/load": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/printed/properties/unload": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "5 min"
 },
 "#/$defs/printed/properties/wash": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/printed/properties/dry": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "30 min"
 },
 "#/$defs/printed/properties/cure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "20 min"
 },
 "#/$defs/printed/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "none"
 },
 "#/$defs/printed/properties/layer": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Layer",
  "example": "50 um"
 },
 "#/$defs/printed/properties/height": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Height",
  "example": "42 mm"
 },
 "#/$defs/printed/properties/footprint": {
  "type": [
   "string"
  ],
  "title": "Footprint",
  "example": "30 x 20 mm"
 },
 "#/$defs/printed/properties/supports": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Supports",
  "example": "20 %"
 },
 "#/$defs/printed/properties/infill": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Infill",
  "example": "20 %"
 },
 "#/$defs/printed/properties/walls": {
  "type": [
   "integer"
  ],
  "title": "Walls",
  "example": "3"
 },
 "#/$defs/printed/properties/wall": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Thinnest wall",
  "example": "1 mm"
 },
 "#/$defs/printed/properties/hole": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Smallest hole",
  "example": "1.5 mm"
 },
 "#/$defs/printed/properties/shrink": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Shrink",
  "example": "0.4 %"
 },
 "#/$defs/printed/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/printed/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/printed/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/printed/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/printed/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/printed/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/printed/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/printed/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/printed/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/printed/properties/finished": {
  "ref": "#/$defs/finished"
 },
 "#/$defs/printed/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/printed/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/printedWay": {
  "keys": [
   "kind",
   "machine",
   "material",
   "volume",
   "time",
   "plate",
   "load",
   "unload",
   "wash",
   "dry",
   "cure",
   "attention",
   "layer",
   "height",
   "footprint",
   "supports",
   "infill",
   "walls",
   "wall",
   "hole",
   "shrink",
   "lot",
   "features",
   "model",
   "place",
   "finished",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Printed part"
 },
 "#/$defs/printedWay/properties/kind": {
  "only": [
   "printed"
  ],
  "title": "Kind",
  "example": "printed"
 },
 "#/$defs/printedWay/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "printer"
 },
 "#/$defs/printedWay/properties/material": {
  "type": [
   "string"
  ],
  "title": "Material",
  "example": "al-6082"
 },
 "#/$defs/printedWay/properties/volume": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Volume",
  "example": "8.5 cm3"
 },
 "#/$defs/printedWay/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "2 h 20 min"
 },
 "#/$defs/printedWay/properties/plate": {
  "type": [
   "string"
  ],
  "title": "Plate",
  "example": "p1"
 },
 "#/$defs/printedWay/properties/load": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/printedWay/properties/unload": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "5 min"
 },
 "#/$defs/printedWay/properties/wash": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/printedWay/properties/dry": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "30 min"
 },
 "#/$defs/printedWay/properties/cure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "20 min"
 },
 "#/$defs/printedWay/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "none"
 },
 "#/$defs/printedWay/properties/layer": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Layer",
  "example": "50 um"
 },
 "#/$defs/printedWay/properties/height": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Height",
  "example": "42 mm"
 },
 "#/$defs/printedWay/properties/footprint": {
  "type": [
   "string"
  ],
  "title": "Footprint",
  "example": "30 x 20 mm"
 },
 "#/$defs/printedWay/properties/supports": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Supports",
  "example": "20 %"
 },
 "#/$defs/printedWay/properties/infill": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Infill",
  "example": "20 %"
 },
 "#/$defs/printedWay/properties/walls": {
  "type": [
   "integer"
  ],
  "title": "Walls",
  "example": "3"
 },
 "#/$defs/printedWay/properties/wall": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Thinnest wall",
  "example": "1 mm"
 },
 "#/$defs/printedWay/properties/hole": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Smallest hole",
  "example": "1.5 mm"
 },
 "#/$defs/printedWay/properties/shrink": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Shrink",
  "example": "0.4 %"
 },
 "#/$defs/printedWay/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/printedWay/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/printedWay/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/printedWay/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/printedWay/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/printedWay/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/printedWay/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/printedWay/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/printedWay/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/printedWay/properties/finished": {
  "ref": "#/$defs/finished"
 },
 "#/$defs/printedWay/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/printedWay/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/board": {
  "keys": [
   "kind",
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "general",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "outline",
   "layers",
   "thickness",
   "made",
   "panel",
   "currents",
   "placements",
   "places",
   "solder",
   "offers",
   "lot",
   "features",
   "model",
   "place",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Board part"
 },
 "#/$defs/board/properties/kind": {
  "only": [
   "board"
  ],
  "title": "Kind",
  "example": "board"
 },
 "#/$defs/board/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/board/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/board/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/board/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/board/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/board/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/board/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/board/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/board/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/board/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/board/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/board/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/board/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/board/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/board/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/board/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/board/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/board/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/board/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/board/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/board/properties/outline": {
  "type": [
   "string"
  ],
  "title": "Outline",
  "example": "22 x 14 mm"
 },
 "#/$defs/board/properties/layers": {
  "type": [
   "integer"
  ],
  "title": "Layers",
  "example": "2"
 },
 "#/$defs/board/properties/thickness": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Thickness",
  "example": "1.6 mm"
 },
 "#/$defs/board/properties/made": {
  "ref": "#/$defs/made"
 },
 "#/$defs/board/properties/panel": {
  "ref": "#/$defs/panel"
 },
 "#/$defs/board/properties/currents": {
  "type": [
   "array"
  ],
  "title": "Currents",
  "example": "[{what: motor, amps: 2 A, width: 1 mm}]"
 },
 "#/$defs/board/properties/currents/items": {
  "ref": "#/$defs/traceCurrent"
 },
 "#/$defs/board/properties/placements": {
  "title": "Placements",
  "example": "bridge.csv"
 },
 "#/$defs/board/properties/placements/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/board/properties/placements/anyOf/1": {
  "ref": "#/$defs/placements"
 },
 "#/$defs/board/properties/places": {
  "type": [
   "string",
   "array"
  ],
  "title": "Components",
  "example": "[resistor 10k x4, hall sensor]"
 },
 "#/$defs/board/properties/places/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/board/properties/solder": {
  "ref": "#/$defs/solder"
 },
 "#/$defs/board/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: bearings, price: 3.1, lead: 2 wd}]"
 },
 "#/$defs/board/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/board/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/board/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/board/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/board/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/board/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/board/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/board/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/board/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/board/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/board/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/board/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/boardWay": {
  "keys": [
   "kind",
   "outline",
   "layers",
   "thickness",
   "made",
   "panel",
   "currents",
   "placements",
   "places",
   "solder",
   "offers",
   "lot",
   "features",
   "model",
   "place",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Board part"
 },
 "#/$defs/boardWay/properties/kind": {
  "only": [
   "board"
  ],
  "title": "Kind",
  "example": "board"
 },
 "#/$defs/boardWay/properties/outline": {
  "type": [
   "string"
  ],
  "title": "Outline",
  "example": "22 x 14 mm"
 },
 "#/$defs/boardWay/properties/layers": {
  "type": [
   "integer"
  ],
  "title": "Layers",
  "example": "2"
 },
 "#/$defs/boardWay/properties/thickness": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Thickness",
  "example": "1.6 mm"
 },
 "#/$defs/boardWay/properties/made": {
  "ref": "#/$defs/made"
 },
 "#/$defs/boardWay/properties/panel": {
  "ref": "#/$defs/panel"
 },
 "#/$defs/boardWay/properties/currents": {
  "type": [
   "array"
  ],
  "title": "Currents",
  "example": "[{what: motor, amps: 2 A, width: 1 mm}]"
 },
 "#/$defs/boardWay/properties/currents/items": {
  "ref": "#/$defs/traceCurrent"
 },
 "#/$defs/boardWay/properties/placements": {
  "title": "Placements",
  "example": "bridge.csv"
 },
 "#/$defs/boardWay/properties/placements/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/boardWay/properties/placements/anyOf/1": {
  "ref": "#/$defs/placements"
 },
 "#/$defs/boardWay/properties/places": {
  "type": [
   "string",
   "array"
  ],
  "title": "Components",
  "example": "[resistor 10k x4, hall sensor]"
 },
 "#/$defs/boardWay/properties/places/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/boardWay/properties/solder": {
  "ref": "#/$defs/solder"
 },
 "#/$defs/boardWay/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: bearings, price: 3.1, lead: 2 wd}]"
 },
 "#/$defs/boardWay/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/boardWay/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/boardWay/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/boardWay/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/boardWay/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/boardWay/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/boardWay/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/boardWay/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/boardWay/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/boardWay/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/boardWay/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/boardWay/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/bought": {
  "keys": [
   "kind",
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "general",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "offers",
   "value",
   "package",
   "attrition",
   "model",
   "place",
   "features",
   "lot",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Bought part"
 },
 "#/$defs/bought/properties/kind": {
  "only": [
   "bought"
  ],
  "title": "Kind",
  "example": "bought"
 },
 "#/$defs/bought/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/bought/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/bought/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/bought/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/bought/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/bought/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/bought/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/bought/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/bought/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/bought/properties/general": {
  "type": [
   "string"
  ],
  "title": "General tolerances",
  "example": "m"
 },
 "#/$defs/bought/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/bought/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/bought/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/bought/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/bought/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/bought/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/bought/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/bought/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/bought/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/bought/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/bought/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: bearings, price: 3.1, lead: 2 wd}]"
 },
 "#/$defs/bought/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/bought/properties/value": {
  "type": [
   "string"
  ],
  "title": "Value",
  "example": "4k7"
 },
 "#/$defs/bought/properties/package": {
  "type": [
   "string"
  ],
  "title": "Package",
  "example": "\"0805\""
 },
 "#/$defs/bought/properties/attrition": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Attrition",
  "example": "5 %"
 },
 "#/$defs/bought/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/bought/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/bought/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/bought/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/bought/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/bought/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/bought/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/bought/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/bought/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/bought/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/bought/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/boughtWay": {
  "keys": [
   "kind",
   "offers",
   "value",
   "package",
   "attrition",
   "model",
   "place",
   "features",
   "lot",
   "route"
  ],
  "type": [
   "object"
  ],
  "title": "Bought part"
 },
 "#/$defs/boughtWay/properties/kind": {
  "only": [
   "bought"
  ],
  "title": "Kind",
  "example": "bought"
 },
 "#/$defs/boughtWay/properties/offers": {
  "type": [
   "array"
  ],
  "title": "Offers",
  "example": "[{vendor: bearings, price: 3.1, lead: 2 wd}]"
 },
 "#/$defs/boughtWay/properties/offers/items": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/boughtWay/properties/value": {
  "type": [
   "string"
  ],
  "title": "Value",
  "example": "4k7"
 },
 "#/$defs/boughtWay/properties/package": {
  "type": [
   "string"
  ],
  "title": "Package",
  "example": "\"0805\""
 },
 "#/$defs/boughtWay/properties/attrition": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Attrition",
  "example": "5 %"
 },
 "#/$defs/boughtWay/properties/model": {
  "type": [
   "string"
  ],
  "title": "Model",
  "example": "models/base.stl"
 },
 "#/$defs/boughtWay/properties/place": {
  "title": "Place",
  "example": "assembled"
 },
 "#/$defs/boughtWay/properties/place/anyOf/0": {
  "only": [
   "assembled"
  ]
 },
 "#/$defs/boughtWay/properties/place/anyOf/1": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/boughtWay/properties/place/anyOf/2": {
  "type": [
   "array"
  ]
 },
 "#/$defs/boughtWay/properties/place/anyOf/2/items": {
  "ref": "#/$defs/meshPlace"
 },
 "#/$defs/boughtWay/properties/features": {
  "type": [
   "object"
  ],
  "title": "Features",
  "example": "{seat: 6 H7, depth: 4.2 ± 0.05 mm}"
 },
 "#/$defs/boughtWay/properties/features/additionalProperties": {
  "type": [
   "string",
   "number"
  ]
 },
 "#/$defs/boughtWay/properties/lot": {
  "type": [
   "integer"
  ],
  "title": "Lot",
  "example": "5"
 },
 "#/$defs/boughtWay/properties/route": {
  "type": [
   "array"
  ],
  "title": "Route",
  "example": "[{deburr: {time: 10 min}}]"
 },
 "#/$defs/boughtWay/properties/route/items": {
  "ref": "#/$defs/routeItem"
 },
 "#/$defs/assembly": {
  "keys": [
   "kind",
   "role",
   "qty",
   "spares",
   "have",
   "worth",
   "number",
   "description",
   "revision",
   "drawing",
   "mass",
   "yield",
   "tries",
   "wears",
   "caution",
   "note",
   "after",
   "openings",
   "steps",
   "ground"
  ],
  "type": [
   "object"
  ],
  "title": "Assembly part"
 },
 "#/$defs/assembly/properties/kind": {
  "only": [
   "assembly"
  ],
  "title": "Kind",
  "example": "assembly"
 },
 "#/$defs/assembly/properties/role": {
  "type": [
   "string"
  ],
  "title": "Role",
  "only": [
   "device",
   "fixture",
   "consumable",
   "tool"
  ],
  "example": "fixture"
 },
 "#/$defs/assembly/properties/qty": {
  "type": [
   "integer"
  ],
  "title": "Quantity",
  "example": "4"
 },
 "#/$defs/assembly/properties/spares": {
  "type": [
   "integer"
  ],
  "title": "Spares",
  "example": "1"
 },
 "#/$defs/assembly/properties/have": {
  "type": [
   "integer"
  ],
  "title": "Have",
  "example": "2"
 },
 "#/$defs/assembly/properties/worth": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Worth",
  "example": "1.2"
 },
 "#/$defs/assembly/properties/number": {
  "type": [
   "string"
  ],
  "title": "Part number",
  "example": "OC-104"
 },
 "#/$defs/assembly/properties/description": {
  "type": [
   "string"
  ],
  "title": "Description",
  "example": "\"ISO 4762, A2\""
 },
 "#/$defs/assembly/properties/revision": {
  "type": [
   "string",
   "number"
  ],
  "title": "Revision",
  "example": "B"
 },
 "#/$defs/assembly/properties/drawing": {
  "type": [
   "string"
  ],
  "title": "Drawing",
  "example": "OC-104.pdf"
 },
 "#/$defs/assembly/properties/mass": {
  "quantity": "mass",
  "type": [
   "string",
   "number"
  ],
  "title": "Mass",
  "example": "12 g"
 },
 "#/$defs/assembly/properties/yield": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Yield",
  "example": "90 %"
 },
 "#/$defs/assembly/properties/tries": {
  "type": [
   "integer"
  ],
  "title": "Tries",
  "example": "2"
 },
 "#/$defs/assembly/properties/wears": {
  "type": [
   "boolean"
  ],
  "title": "Wears",
  "example": "true"
 },
 "#/$defs/assembly/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[sharp edges]"
 },
 "#/$defs/assembly/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/assembly/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "match to cover"
 },
 "#/$defs/assembly/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/assembly/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/assembly/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/assembly/properties/openings": {
  "ref": "#/$defs/openings"
 },
 "#/$defs/assembly/properties/steps": {
  "ref": "#/$defs/steps"
 },
 "#/$defs/assembly/properties/ground": {
  "type": [
   "string"
  ],
  "title": "Ground",
  "example": "base"
 },
 "#/$defs/assemblyWay": {
  "keys": [
   "kind",
   "openings",
   "steps",
   "ground"
  ],
  "type": [
   "object"
  ],
  "title": "Assembly part"
 },
 "#/$defs/assemblyWay/properties/kind": {
  "only": [
   "assembly"
  ],
  "title": "Kind",
  "example": "assembly"
 },
 "#/$defs/assemblyWay/properties/openings": {
  "ref": "#/$defs/openings"
 },
 "#/$defs/assemblyWay/properties/steps": {
  "ref": "#/$defs/steps"
 },
 "#/$defs/assemblyWay/properties/ground": {
  "type": [
   "string"
  ],
  "title": "Ground",
  "example": "base"
 },
 "#/$defs/routeItem": {
  "keys": [
   "setup",
   "ops",
   "prepare",
   "deburr",
   "polish",
   "inspect",
   "cure",
   "do",
   "outside"
  ],
  "type": [
   "object"
  ],
  "title": "Route step"
 },
 "#/$defs/routeItem/properties/setup": {
  "ref": "#/$defs/setupOperation"
 },
 "#/$defs/routeItem/properties/ops": {
  "type": [
   "array"
  ],
  "title": "Operations",
  "example": "[{face: {cutter: flat-3, time: 6 min}}]"
 },
 "#/$defs/routeItem/properties/ops/items": {
  "ref": "#/$defs/operation"
 },
 "#/$defs/routeItem/properties/prepare": {
  "ref": "#/$defs/prepareOperation"
 },
 "#/$defs/routeItem/properties/deburr": {
  "ref": "#/$defs/deburrOperation"
 },
 "#/$defs/routeItem/properties/polish": {
  "ref": "#/$defs/polishOperation"
 },
 "#/$defs/routeItem/properties/inspect": {
  "ref": "#/$defs/inspectOperation"
 },
 "#/$defs/routeItem/properties/cure": {
  "ref": "#/$defs/cureOperation"
 },
 "#/$defs/routeItem/properties/do": {
  "ref": "#/$defs/doOperation"
 },
 "#/$defs/routeItem/properties/outside": {
  "ref": "#/$defs/outsideOperation"
 },
 "#/$defs/operation": {
  "keys": [
   "saw",
   "face",
   "rough",
   "finish",
   "contour",
   "chamfer",
   "drill",
   "ream",
   "bore",
   "tap",
   "thread mill",
   "turn",
   "part off",
   "cut",
   "deburr",
   "polish",
   "inspect",
   "do"
  ],
  "type": [
   "object"
  ],
  "title": "Operation"
 },
 "#/$defs/operation/properties/saw": {
  "ref": "#/$defs/sawOperation"
 },
 "#/$defs/operation/properties/face": {
  "ref": "#/$defs/faceOperation"
 },
 "#/$defs/operation/properties/rough": {
  "ref": "#/$defs/roughOperation"
 },
 "#/$defs/operation/properties/finish": {
  "ref": "#/$defs/finishOperation"
 },
 "#/$defs/operation/properties/contour": {
  "ref": "#/$defs/contourOperation"
 },
 "#/$defs/operation/properties/chamfer": {
  "ref": "#/$defs/chamferOperation"
 },
 "#/$defs/operation/properties/drill": {
  "ref": "#/$defs/drillOperation"
 },
 "#/$defs/operation/properties/ream": {
  "ref": "#/$defs/reamOperation"
 },
 "#/$defs/operation/properties/bore": {
  "ref": "#/$defs/boreOperation"
 },
 "#/$defs/operation/properties/tap": {
  "ref": "#/$defs/tapOperation"
 },
 "#/$defs/operation/properties/thread mill": {
  "ref": "#/$defs/threadMillOperation"
 },
 "#/$defs/operation/properties/turn": {
  "ref": "#/$defs/turnOperation"
 },
 "#/$defs/operation/properties/part off": {
  "ref": "#/$defs/partOffOperation"
 },
 "#/$defs/operation/properties/cut": {
  "ref": "#/$defs/cutOperation"
 },
 "#/$defs/operation/properties/deburr": {
  "ref": "#/$defs/deburrOperation"
 },
 "#/$defs/operation/properties/polish": {
  "ref": "#/$defs/polishOperation"
 },
 "#/$defs/operation/properties/inspect": {
  "ref": "#/$defs/inspectOperation"
 },
 "#/$defs/operation/properties/do": {
  "ref": "#/$defs/doOperation"
 },
 "#/$defs/openings": {
  "type": [
   "object"
  ],
  "title": "Openings",
  "example": "{base: [top, bottom]}"
 },
 "#/$defs/openings/additionalProperties": {
  "type": [
   "string",
   "array"
  ]
 },
 "#/$defs/openings/additionalProperties/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/steps": {
  "type": [
   "array"
  ],
  "title": "Steps",
  "example": "[{put: bearing x2, in: base, by: press}]"
 },
 "#/$defs/steps/items": {
  "ref": "#/$defs/step"
 },
 "#/$defs/step": {
  "keys": [
   "name",
   "put",
   "as",
   "in",
   "on",
   "through",
   "by",
   "mates",
   "engagement",
   "around",
   "with",
   "from",
   "gives",
   "light",
   "locker",
   "tool",
   "fixture",
   "machine",
   "torque",
   "adhesive",
   "cure",
   "time",
   "check",
   "caution",
   "shut",
   "open",
   "turn",
   "test",
   "do",
   "needs",
   "reaches",
   "after",
   "before",
   "before_last_of",
   "loose_until",
   "within",
   "fails",
   "rework",
   "together",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Step"
 },
 "#/$defs/step/properties/name": {
  "type": [
   "string"
  ],
  "title": "Name",
  "example": "bond magnet"
 },
 "#/$defs/step/properties/put": {
  "type": [
   "string"
  ],
  "title": "Put",
  "example": "bearing x2"
 },
 "#/$defs/step/properties/as": {
  "type": [
   "string",
   "array"
  ],
  "title": "As",
  "example": "[left head, right head]"
 },
 "#/$defs/step/properties/as/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/in": {
  "type": [
   "string"
  ],
  "title": "In",
  "example": "base"
 },
 "#/$defs/step/properties/on": {
  "type": [
   "string"
  ],
  "title": "On",
  "example": "base"
 },
 "#/$defs/step/properties/through": {
  "type": [
   "string"
  ],
  "title": "Through",
  "example": "top"
 },
 "#/$defs/step/properties/by": {
  "type": [
   "string"
  ],
  "title": "Joining method",
  "only": [
   "screw",
   "thread",
   "press",
   "seat",
   "glue",
   "solder",
   "snap",
   "crimp",
   "plug",
   "magnet",
   "tie"
  ],
  "example": "screw"
 },
 "#/$defs/step/properties/mates": {
  "type": [
   "array"
  ],
  "title": "Mates",
  "example": "[hub.thread, lock ring.ring thread]"
 },
 "#/$defs/step/properties/mates/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/engagement": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Engagement",
  "example": "8 mm"
 },
 "#/$defs/step/properties/around": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Around",
  "example": "16 mm"
 },
 "#/$defs/step/properties/with": {
  "type": [
   "string",
   "array"
  ],
  "title": "With",
  "example": "[screw M2x4 x3]"
 },
 "#/$defs/step/properties/with/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/from": {
  "type": [
   "string"
  ],
  "title": "From",
  "example": "top"
 },
 "#/$defs/step/properties/gives": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Gives",
  "example": "0.8 mm"
 },
 "#/$defs/step/properties/light": {
  "type": [
   "boolean"
  ],
  "title": "Light press",
  "example": "true"
 },
 "#/$defs/step/properties/locker": {
  "type": [
   "boolean"
  ],
  "title": "Thread locker",
  "example": "true"
 },
 "#/$defs/step/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "hex 1.5"
 },
 "#/$defs/step/properties/fixture": {
  "type": [
   "string"
  ],
  "title": "Fixture",
  "example": "bond jig"
 },
 "#/$defs/step/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "arbor press"
 },
 "#/$defs/step/properties/torque": {
  "quantity": "torque",
  "type": [
   "string",
   "number"
  ],
  "title": "Torque",
  "example": "0.15 N m"
 },
 "#/$defs/step/properties/adhesive": {
  "type": [
   "string"
  ],
  "title": "Adhesive",
  "example": "epoxy"
 },
 "#/$defs/step/properties/cure": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Cure",
  "example": "12 h"
 },
 "#/$defs/step/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "6 min"
 },
 "#/$defs/step/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "turns freely"
 },
 "#/$defs/step/properties/caution": {
  "type": [
   "string",
   "array"
  ],
  "title": "Caution",
  "example": "[do not touch the disc]"
 },
 "#/$defs/step/properties/caution/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/shut": {
  "type": [
   "string",
   "array"
  ],
  "title": "Shut",
  "example": "[base.bottom]"
 },
 "#/$defs/step/properties/shut/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/open": {
  "type": [
   "string",
   "array"
  ],
  "title": "Open",
  "example": "[base.bottom]"
 },
 "#/$defs/step/properties/open/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/turn": {
  "type": [
   "string"
  ],
  "title": "Turn over",
  "example": "bottom up"
 },
 "#/$defs/step/properties/test": {
  "type": [
   "string"
  ],
  "title": "Test",
  "example": "reads 100 pulses a turn"
 },
 "#/$defs/step/properties/do": {
  "type": [
   "string"
  ],
  "title": "Do",
  "example": "route the cable"
 },
 "#/$defs/step/properties/needs": {
  "type": [
   "string",
   "array"
  ],
  "title": "Needs",
  "example": "[firmware]"
 },
 "#/$defs/step/properties/needs/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/reaches": {
  "type": [
   "string",
   "array"
  ],
  "title": "Reaches",
  "example": "[trimmer]"
 },
 "#/$defs/step/properties/reaches/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/after": {
  "type": [
   "string",
   "array"
  ],
  "title": "After",
  "example": "[pin map, {step: bond magnet, lag: 2 h}]"
 },
 "#/$defs/step/properties/after/items/anyOf/0": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/after/items/anyOf/1": {
  "ref": "#/$defs/link"
 },
 "#/$defs/step/properties/before": {
  "type": [
   "string",
   "array"
  ],
  "title": "Before",
  "example": "[cover]"
 },
 "#/$defs/step/properties/before/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/before_last_of": {
  "type": [
   "string",
   "array"
  ],
  "title": "Before the last of",
  "example": "[base.bottom]"
 },
 "#/$defs/step/properties/before_last_of/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/loose_until": {
  "type": [
   "string",
   "array"
  ],
  "title": "Loose until",
  "example": "[fit cover]"
 },
 "#/$defs/step/properties/loose_until/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/within": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Longest wait",
  "example": "10 min"
 },
 "#/$defs/step/properties/fails": {
  "quantity": "ratio",
  "type": [
   "string",
   "number"
  ],
  "title": "Chance of failing",
  "example": "10 %"
 },
 "#/$defs/step/properties/rework": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "30 min"
 },
 "#/$defs/step/properties/together": {
  "type": [
   "boolean"
  ],
  "title": "Together",
  "example": "true"
 },
 "#/$defs/step/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/step/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/step/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/step/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/step/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/step/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/step/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "dry fit first"
 },
 "#/$defs/chain": {
  "keys": [
   "must",
   "sum"
  ],
  "type": [
   "object"
  ],
  "title": "Chain"
 },
 "#/$defs/chain/properties/must": {
  "type": [
   "string"
  ],
  "title": "Must",
  "example": "0.30 ± 0.10 mm"
 },
 "#/$defs/chain/properties/sum": {
  "type": [
   "array"
  ],
  "title": "Sum",
  "example": "[base.depth, \"-rotor.length\"]"
 },
 "#/$defs/chain/properties/sum/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/boreOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "diameter",
   "from",
   "feature",
   "set"
  ],
  "type": [
   "object"
  ],
  "title": "Boring",
  "example": "{time: 12 min}"
 },
 "#/$defs/boreOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/boreOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/boreOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/boreOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/boreOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/boreOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/boreOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/boreOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/boreOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/boreOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/boreOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/boreOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/boreOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/boreOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/boreOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/boreOperation/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "19 mm"
 },
 "#/$defs/boreOperation/properties/from": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "From",
  "example": "18 mm"
 },
 "#/$defs/boreOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "seat"
 },
 "#/$defs/boreOperation/properties/set": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Setting",
  "example": "45 s"
 },
 "#/$defs/chamferOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "length",
   "width"
  ],
  "type": [
   "object"
  ],
  "title": "Chamfering",
  "example": "{time: 12 min}"
 },
 "#/$defs/chamferOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/chamferOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/chamferOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "edge"
 },
 "#/$defs/chamferOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/chamferOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/chamferOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/chamferOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/chamferOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/chamferOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/chamferOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/chamferOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/chamferOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/chamferOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/chamferOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/chamferOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/chamferOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/chamferOperation/properties/length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Length",
  "example": "180 mm"
 },
 "#/$defs/chamferOperation/properties/width": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Width",
  "example": "0.3 mm"
 },
 "#/$defs/contourOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "length",
   "height",
   "corner",
   "wall"
  ],
  "type": [
   "object"
  ],
  "title": "Contouring",
  "example": "{time: 12 min}"
 },
 "#/$defs/contourOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/contourOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/contourOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "outline"
 },
 "#/$defs/contourOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/contourOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/contourOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/contourOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/contourOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/contourOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/contourOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/contourOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/contourOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/contourOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/contourOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/contourOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/contourOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/contourOperation/properties/length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Length",
  "example": "180 mm"
 },
 "#/$defs/contourOperation/properties/height": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Height",
  "example": "12 mm"
 },
 "#/$defs/contourOperation/properties/corner": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Corner radius",
  "example": "2 mm"
 },
 "#/$defs/contourOperation/properties/wall": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Wall",
  "example": "1.5 mm"
 },
 "#/$defs/cureOperation": {
  "keys": [
   "time",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "machine",
   "fixture"
  ],
  "type": [
   "object"
  ],
  "title": "Curing",
  "example": "{time: 10 min}"
 },
 "#/$defs/cureOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/cureOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/cureOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/cureOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/cureOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/cureOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/cureOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/cureOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/cureOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/cureOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/cureOperation/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "oven"
 },
 "#/$defs/cureOperation/properties/fixture": {
  "type": [
   "string"
  ],
  "title": "Fixture",
  "example": "bond jig"
 },
 "#/$defs/cutOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "what"
  ],
  "type": [
   "object"
  ],
  "title": "Cutting",
  "example": "{time: 12 min}"
 },
 "#/$defs/cutOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/cutOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/cutOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/cutOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/cutOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/cutOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/cutOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/cutOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/cutOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/cutOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/cutOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/cutOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/cutOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/cutOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/cutOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/cutOperation/properties/what": {
  "type": [
   "string"
  ],
  "title": "What",
  "example": "laser-cut the slots"
 },
 "#/$defs/deburrOperation": {
  "keys": [
   "time",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "each"
  ],
  "type": [
   "object"
  ],
  "title": "Deburring",
  "example": "{time: 10 min}"
 },
 "#/$defs/deburrOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/deburrOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/deburrOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/deburrOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/deburrOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/deburrOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/deburrOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/deburrOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/deburrOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/deburrOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/deburrOperation/properties/each": {
  "type": [
   "boolean"
  ],
  "title": "Each piece",
  "example": "true"
 },
 "#/$defs/doOperation": {
  "keys": [
   "time",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "what",
   "machine",
   "each",
   "fixture"
  ],
  "type": [
   "object"
  ],
  "title": "Hand work",
  "example": "{time: 10 min}"
 },
 "#/$defs/doOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/doOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/doOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/doOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/doOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/doOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/doOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/doOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/doOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/doOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/doOperation/properties/what": {
  "type": [
   "string"
  ],
  "title": "What",
  "example": "wind 20 turns"
 },
 "#/$defs/doOperation/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "press"
 },
 "#/$defs/doOperation/properties/each": {
  "type": [
   "boolean"
  ],
  "title": "Each piece",
  "example": "true"
 },
 "#/$defs/doOperation/properties/fixture": {
  "type": [
   "string"
  ],
  "title": "Fixture",
  "example": "bond jig"
 },
 "#/$defs/drillOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "diameter",
   "holes",
   "peck"
  ],
  "type": [
   "object"
  ],
  "title": "Drilling",
  "example": "{time: 12 min}"
 },
 "#/$defs/drillOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/drillOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/drillOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "pin hole"
 },
 "#/$defs/drillOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/drillOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/drillOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/drillOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/drillOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/drillOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/drillOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/drillOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/drillOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/drillOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/drillOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/drillOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/drillOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/drillOperation/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "2.5 mm"
 },
 "#/$defs/drillOperation/properties/holes": {
  "type": [
   "integer"
  ],
  "title": "Holes",
  "example": "4"
 },
 "#/$defs/drillOperation/properties/peck": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Peck",
  "example": "1 mm"
 },
 "#/$defs/faceOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "stock",
   "size"
  ],
  "type": [
   "object"
  ],
  "title": "Facing",
  "example": "{time: 12 min}"
 },
 "#/$defs/faceOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/faceOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/faceOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "height"
 },
 "#/$defs/faceOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/faceOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/faceOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/faceOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/faceOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/faceOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/faceOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/faceOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/faceOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/faceOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/faceOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/faceOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/faceOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/faceOperation/properties/stock": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Stock removed",
  "example": "0.5 mm"
 },
 "#/$defs/faceOperation/properties/size": {
  "type": [
   "string"
  ],
  "title": "Size",
  "example": "80 x 50 mm"
 },
 "#/$defs/finishOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "area",
   "scallop"
  ],
  "type": [
   "object"
  ],
  "title": "Finishing",
  "example": "{time: 12 min}"
 },
 "#/$defs/finishOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/finishOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/finishOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "pocket"
 },
 "#/$defs/finishOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/finishOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/finishOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/finishOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/finishOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/finishOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/finishOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/finishOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/finishOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/finishOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/finishOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/finishOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/finishOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/finishOperation/properties/area": {
  "quantity": "area",
  "type": [
   "string",
   "number"
  ],
  "title": "Area",
  "example": "32 cm2"
 },
 "#/$defs/finishOperation/properties/scallop": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Scallop",
  "example": "10 um"
 },
 "#/$defs/inspectOperation": {
  "keys": [
   "time",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "features",
   "each"
  ],
  "type": [
   "object"
  ],
  "title": "Inspecting",
  "example": "{time: 10 min}"
 },
 "#/$defs/inspectOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/inspectOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/inspectOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/inspectOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/inspectOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/inspectOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/inspectOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/inspectOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/inspectOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/inspectOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/inspectOperation/properties/features": {
  "type": [
   "string",
   "array"
  ],
  "title": "Features",
  "example": "[seat, thread]"
 },
 "#/$defs/inspectOperation/properties/features/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/inspectOperation/properties/each": {
  "type": [
   "boolean"
  ],
  "title": "Each piece",
  "example": "true"
 },
 "#/$defs/outsideOperation": {
  "keys": [
   "offer",
   "what",
   "needs",
   "check",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Outside",
  "example": "{offer: {vendor: anodiser, price: 1.1, minimum: 35, lead: 5..7..12 wd}}"
 },
 "#/$defs/outsideOperation/properties/offer": {
  "ref": "#/$defs/offer"
 },
 "#/$defs/outsideOperation/properties/what": {
  "type": [
   "string"
  ],
  "title": "What",
  "example": "\"black anodise, 10 um\""
 },
 "#/$defs/outsideOperation/properties/needs": {
  "type": [
   "string",
   "array"
  ],
  "title": "Waits for",
  "example": "[drawing]"
 },
 "#/$defs/outsideOperation/properties/needs/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/outsideOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/outsideOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/partOffOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "diameter",
   "bore"
  ],
  "type": [
   "object"
  ],
  "title": "Parting off",
  "example": "{time: 12 min}"
 },
 "#/$defs/partOffOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/partOffOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/partOffOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "length"
 },
 "#/$defs/partOffOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/partOffOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/partOffOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/partOffOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/partOffOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/partOffOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/partOffOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/partOffOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/partOffOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/partOffOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/partOffOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/partOffOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/partOffOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/partOffOperation/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "20 mm"
 },
 "#/$defs/partOffOperation/properties/bore": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Bore",
  "example": "6 mm"
 },
 "#/$defs/polishOperation": {
  "keys": [
   "time",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note",
   "each"
  ],
  "type": [
   "object"
  ],
  "title": "Polishing",
  "example": "{time: 10 min}"
 },
 "#/$defs/polishOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/polishOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "seat"
 },
 "#/$defs/polishOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/polishOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/polishOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/polishOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/polishOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/polishOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/polishOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/polishOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/polishOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/polishOperation/properties/each": {
  "type": [
   "boolean"
  ],
  "title": "Each piece",
  "example": "true"
 },
 "#/$defs/prepareOperation": {
  "keys": [
   "time",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "tool",
   "check",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Preparing",
  "example": "{time: 10 min}"
 },
 "#/$defs/prepareOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "10 min"
 },
 "#/$defs/prepareOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/prepareOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/prepareOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/prepareOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/prepareOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/prepareOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/prepareOperation/properties/tool": {
  "type": [
   "string"
  ],
  "title": "Tool",
  "example": "needle file"
 },
 "#/$defs/prepareOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/prepareOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/reamOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "diameter",
   "holes",
   "feature"
  ],
  "type": [
   "object"
  ],
  "title": "Reaming",
  "example": "{time: 12 min}"
 },
 "#/$defs/reamOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/reamOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/reamOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/reamOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/reamOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/reamOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/reamOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/reamOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/reamOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/reamOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/reamOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/reamOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/reamOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/reamOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/reamOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/reamOperation/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "6 mm"
 },
 "#/$defs/reamOperation/properties/holes": {
  "type": [
   "integer"
  ],
  "title": "Holes",
  "example": "2"
 },
 "#/$defs/reamOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "seat"
 },
 "#/$defs/roughOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "volume",
   "pocket",
   "corner"
  ],
  "type": [
   "object"
  ],
  "title": "Roughing",
  "example": "{time: 12 min}"
 },
 "#/$defs/roughOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/roughOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/roughOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "pocket"
 },
 "#/$defs/roughOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/roughOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/roughOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/roughOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/roughOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/roughOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/roughOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/roughOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/roughOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/roughOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/roughOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/roughOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/roughOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/roughOperation/properties/volume": {
  "quantity": "volume",
  "type": [
   "string",
   "number"
  ],
  "title": "Volume",
  "example": "9.4 cm3"
 },
 "#/$defs/roughOperation/properties/pocket": {
  "type": [
   "string"
  ],
  "title": "Pocket",
  "example": "40 x 25 x 8 mm"
 },
 "#/$defs/roughOperation/properties/corner": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Corner radius",
  "example": "2 mm"
 },
 "#/$defs/sawOperation": {
  "keys": [
   "time",
   "cutter",
   "feature",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "check",
   "note",
   "section",
   "rate"
  ],
  "type": [
   "object"
  ],
  "title": "Sawing",
  "example": "{time: 12 min}"
 },
 "#/$defs/sawOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/sawOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/sawOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "length"
 },
 "#/$defs/sawOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/sawOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/sawOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/sawOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/sawOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/sawOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/sawOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/sawOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/sawOperation/properties/section": {
  "quantity": "area",
  "type": [
   "string",
   "number"
  ],
  "title": "Section",
  "example": "3.2 cm2"
 },
 "#/$defs/sawOperation/properties/rate": {
  "quantity": "area per time",
  "type": [
   "string",
   "number"
  ],
  "title": "Rate",
  "example": "6 cm2/min"
 },
 "#/$defs/setupOperation": {
  "keys": [
   "machine",
   "hold",
   "on",
   "clearance",
   "time",
   "load",
   "unload",
   "zero",
   "who",
   "people",
   "note"
  ],
  "type": [
   "object"
  ],
  "title": "Setup",
  "example": "{machine: mill, hold: vice, time: 20 min}"
 },
 "#/$defs/setupOperation/properties/machine": {
  "type": [
   "string"
  ],
  "title": "Machine",
  "example": "mill"
 },
 "#/$defs/setupOperation/properties/hold": {
  "type": [
   "string"
  ],
  "title": "Held by",
  "example": "vice"
 },
 "#/$defs/setupOperation/properties/on": {
  "type": [
   "string",
   "array"
  ],
  "title": "Held on",
  "example": "[register]"
 },
 "#/$defs/setupOperation/properties/on/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/setupOperation/properties/clearance": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Clearance",
  "example": "60 mm"
 },
 "#/$defs/setupOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "20 min"
 },
 "#/$defs/setupOperation/properties/load": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "2 min"
 },
 "#/$defs/setupOperation/properties/unload": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "1 min"
 },
 "#/$defs/setupOperation/properties/zero": {
  "type": [
   "string"
  ],
  "title": "Work offset",
  "example": "G54 at the left front top corner"
 },
 "#/$defs/setupOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/setupOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/setupOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/setupOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/tapOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "thread",
   "holes",
   "feature"
  ],
  "type": [
   "object"
  ],
  "title": "Tapping",
  "example": "{time: 12 min}"
 },
 "#/$defs/tapOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/tapOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/tapOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/tapOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/tapOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/tapOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/tapOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/tapOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/tapOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/tapOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/tapOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/tapOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/tapOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/tapOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/tapOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/tapOperation/properties/thread": {
  "type": [
   "string"
  ],
  "title": "Thread",
  "example": "M3-6H"
 },
 "#/$defs/tapOperation/properties/holes": {
  "type": [
   "integer"
  ],
  "title": "Holes",
  "example": "4"
 },
 "#/$defs/tapOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "thread"
 },
 "#/$defs/threadMillOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "thread",
   "feature"
  ],
  "type": [
   "object"
  ],
  "title": "Thread milling",
  "example": "{time: 12 min}"
 },
 "#/$defs/threadMillOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/threadMillOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/threadMillOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/threadMillOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/threadMillOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/threadMillOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/threadMillOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/threadMillOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/threadMillOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/threadMillOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/threadMillOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/threadMillOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/threadMillOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/threadMillOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/threadMillOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/threadMillOperation/properties/thread": {
  "type": [
   "string"
  ],
  "title": "Thread",
  "example": "M14x1-6H"
 },
 "#/$defs/threadMillOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "thread"
 },
 "#/$defs/turnOperation": {
  "keys": [
   "time",
   "cutter",
   "who",
   "people",
   "attention",
   "pause",
   "least",
   "depth",
   "step",
   "speed",
   "feed",
   "passes",
   "check",
   "note",
   "diameter",
   "from",
   "length",
   "feature",
   "thread",
   "set"
  ],
  "type": [
   "object"
  ],
  "title": "Turning",
  "example": "{time: 12 min}"
 },
 "#/$defs/turnOperation/properties/time": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Time",
  "example": "12 min"
 },
 "#/$defs/turnOperation/properties/cutter": {
  "type": [
   "string"
  ],
  "title": "Cutter",
  "example": "flat-3"
 },
 "#/$defs/turnOperation/properties/who": {
  "type": [
   "string",
   "array"
  ],
  "title": "Who",
  "example": "[ana]"
 },
 "#/$defs/turnOperation/properties/who/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/turnOperation/properties/people": {
  "type": [
   "integer"
  ],
  "title": "People at once",
  "example": "2"
 },
 "#/$defs/turnOperation/properties/attention": {
  "type": [
   "string"
  ],
  "title": "Attention",
  "only": [
   "hands",
   "nearby",
   "none"
  ],
  "example": "nearby"
 },
 "#/$defs/turnOperation/properties/pause": {
  "type": [
   "boolean"
  ],
  "title": "May pause",
  "example": "false"
 },
 "#/$defs/turnOperation/properties/least": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Least piece",
  "example": "30 min"
 },
 "#/$defs/turnOperation/properties/depth": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Depth",
  "example": "0.5 mm"
 },
 "#/$defs/turnOperation/properties/step": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Step-over",
  "example": "0.2 mm"
 },
 "#/$defs/turnOperation/properties/speed": {
  "quantity": "rotational speed or speed",
  "type": [
   "string",
   "number"
  ],
  "title": "Speed",
  "example": "9000 rpm"
 },
 "#/$defs/turnOperation/properties/feed": {
  "quantity": "speed or length per turn",
  "type": [
   "string",
   "number"
  ],
  "title": "Feed",
  "example": "400 mm/min"
 },
 "#/$defs/turnOperation/properties/passes": {
  "type": [
   "integer"
  ],
  "title": "Passes",
  "example": "3"
 },
 "#/$defs/turnOperation/properties/check": {
  "type": [
   "string"
  ],
  "title": "Check",
  "example": "\"bore clean, no chatter\""
 },
 "#/$defs/turnOperation/properties/note": {
  "type": [
   "string"
  ],
  "title": "Note",
  "example": "cutting oil"
 },
 "#/$defs/turnOperation/properties/diameter": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Diameter",
  "example": "12 mm"
 },
 "#/$defs/turnOperation/properties/from": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "From",
  "example": "45 mm"
 },
 "#/$defs/turnOperation/properties/length": {
  "quantity": "length",
  "type": [
   "string",
   "number"
  ],
  "title": "Length",
  "example": "20 mm"
 },
 "#/$defs/turnOperation/properties/feature": {
  "type": [
   "string"
  ],
  "title": "Feature",
  "example": "journal"
 },
 "#/$defs/turnOperation/properties/thread": {
  "type": [
   "string"
  ],
  "title": "Thread",
  "example": "M24x1-6g"
 },
 "#/$defs/turnOperation/properties/set": {
  "quantity": "time",
  "type": [
   "string",
   "number"
  ],
  "title": "Setting",
  "example": "10 s"
 },
 "#/$defs/project": {
  "keys": [
   "device",
   "use",
   "limits",
   "exchange",
   "people",
   "machines",
   "tools",
   "cutters",
   "materials",
   "vendors",
   "plates",
   "work",
   "parts",
   "assembly",
   "chains"
  ],
  "type": [
   "object"
  ],
  "title": "fettle project"
 },
 "#/$defs/project/properties/device": {
  "ref": "#/$defs/device"
 },
 "#/$defs/project/properties/use": {
  "type": [
   "array"
  ],
  "title": "Use",
  "example": "[../shop/evening-bench.yaml]"
 },
 "#/$defs/project/properties/use/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/project/properties/limits": {
  "ref": "#/$defs/limits"
 },
 "#/$defs/project/properties/exchange": {
  "type": [
   "object"
  ],
  "title": "Exchange",
  "example": "{USD: 0.92 EUR}"
 },
 "#/$defs/project/properties/exchange/additionalProperties": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Rate",
  "example": "0.92 EUR"
 },
 "#/$defs/project/properties/people": {
  "type": [
   "object"
  ],
  "title": "People",
  "example": "{ana: {hours: {mon-thu: \"19:30-22:30\"}}}"
 },
 "#/$defs/project/properties/people/additionalProperties": {
  "ref": "#/$defs/person"
 },
 "#/$defs/project/properties/machines": {
  "type": [
   "object"
  ],
  "title": "Machines",
  "example": "{mill: {hours: {daily: \"09:00-22:00\"}}}"
 },
 "#/$defs/project/properties/machines/additionalProperties": {
  "ref": "#/$defs/machine"
 },
 "#/$defs/project/properties/tools": {
  "type": [
   "object"
  ],
  "title": "Tools",
  "example": "{torque driver: {qty: 1}}"
 },
 "#/$defs/project/properties/tools/additionalProperties": {
  "ref": "#/$defs/tool"
 },
 "#/$defs/project/properties/cutters": {
  "type": [
   "object"
  ],
  "title": "Cutters",
  "example": "{flat-3: {diameter: 3 mm}}"
 },
 "#/$defs/project/properties/cutters/additionalProperties": {
  "ref": "#/$defs/cutter"
 },
 "#/$defs/project/properties/materials": {
  "type": [
   "object"
  ],
  "title": "Materials",
  "example": "{al-6082: {density: 2.7 g/cm3}}"
 },
 "#/$defs/project/properties/materials/additionalProperties": {
  "ref": "#/$defs/material"
 },
 "#/$defs/project/properties/vendors": {
  "type": [
   "object"
  ],
  "title": "Vendors",
  "example": "{boardhouse: {transit: 2..3..6 wd}}"
 },
 "#/$defs/project/properties/vendors/additionalProperties": {
  "ref": "#/$defs/vendor"
 },
 "#/$defs/project/properties/plates": {
  "type": [
   "object"
  ],
  "title": "Plates",
  "example": "{p1: {machine: printer, time: 4 h}}"
 },
 "#/$defs/project/properties/plates/additionalProperties": {
  "ref": "#/$defs/plate"
 },
 "#/$defs/project/properties/work": {
  "type": [
   "object"
  ],
  "title": "Work",
  "example": "{firmware: {time: 3..5..10 h}}"
 },
 "#/$defs/project/properties/work/additionalProperties": {
  "ref": "#/$defs/work"
 },
 "#/$defs/project/properties/parts": {
  "type": [
   "object"
  ],
  "title": "Parts",
  "example": "{magnet: {kind: bought}}"
 },
 "#/$defs/project/properties/parts/additionalProperties": {
  "ref": "#/$defs/part"
 },
 "#/$defs/project/properties/assembly": {
  "ref": "#/$defs/mainAssembly"
 },
 "#/$defs/project/properties/chains": {
  "type": [
   "object"
  ],
  "title": "Chains",
  "example": "{air gap: {must: 0.30 ± 0.10 mm, sum: [base.depth, \"-rotor.length\"]}}"
 },
 "#/$defs/project/properties/chains/additionalProperties": {
  "ref": "#/$defs/chain"
 },
 "#/$defs/shop": {
  "keys": [
   "use",
   "exchange",
   "people",
   "machines",
   "tools",
   "cutters",
   "materials",
   "vendors",
   "plates",
   "work",
   "parts"
  ],
  "type": [
   "object"
  ],
  "title": "fettle shop"
 },
 "#/$defs/shop/properties/use": {
  "type": [
   "array"
  ],
  "title": "Use",
  "example": "[../shop/evening-bench.yaml]"
 },
 "#/$defs/shop/properties/use/items": {
  "type": [
   "string"
  ]
 },
 "#/$defs/shop/properties/exchange": {
  "type": [
   "object"
  ],
  "title": "Exchange",
  "example": "{USD: 0.92 EUR}"
 },
 "#/$defs/shop/properties/exchange/additionalProperties": {
  "quantity": "money",
  "type": [
   "string",
   "number"
  ],
  "title": "Rate",
  "example": "0.92 EUR"
 },
 "#/$defs/shop/properties/people": {
  "type": [
   "object"
  ],
  "title": "People",
  "example": "{ana: {hours: {mon-thu: \"19:30-22:30\"}}}"
 },
 "#/$defs/shop/properties/people/additionalProperties": {
  "ref": "#/$defs/person"
 },
 "#/$defs/shop/properties/machines": {
  "type": [
   "object"
  ],
  "title": "Machines",
  "example": "{mill: {hours: {daily: \"09:00-22:00\"}}}"
 },
 "#/$defs/shop/properties/machines/additionalProperties": {
  "ref": "#/$defs/machine"
 },
 "#/$defs/shop/properties/tools": {
  "type": [
   "object"
  ],
  "title": "Tools",
  "example": "{torque driver: {qty: 1}}"
 },
 "#/$defs/shop/properties/tools/additionalProperties": {
  "ref": "#/$defs/tool"
 },
 "#/$defs/shop/properties/cutters": {
  "type": [
   "object"
  ],
  "title": "Cutters",
  "example": "{flat-3: {diameter: 3 mm}}"
 },
 "#/$defs/shop/properties/cutters/additionalProperties": {
  "ref": "#/$defs/cutter"
 },
 "#/$defs/shop/properties/materials": {
  "type": [
   "object"
  ],
  "title": "Materials",
  "example": "{al-6082: {density: 2.7 g/cm3}}"
 },
 "#/$defs/shop/properties/materials/additionalProperties": {
  "ref": "#/$defs/material"
 },
 "#/$defs/shop/properties/vendors": {
  "type": [
   "object"
  ],
  "title": "Vendors",
  "example": "{boardhouse: {transit: 2..3..6 wd}}"
 },
 "#/$defs/shop/properties/vendors/additionalProperties": {
  "ref": "#/$defs/vendor"
 },
 "#/$defs/shop/properties/plates": {
  "type": [
   "object"
  ],
  "title": "Plates",
  "example": "{p1: {machine: printer, time: 4 h}}"
 },
 "#/$defs/shop/properties/plates/additionalProperties": {
  "ref": "#/$defs/plate"
 },
 "#/$defs/shop/properties/work": {
  "type": [
   "object"
  ],
  "title": "Work",
  "example": "{firmware: {time: 3..5..10 h}}"
 },
 "#/$defs/shop/properties/work/additionalProperties": {
  "ref": "#/$defs/work"
 },
 "#/$defs/shop/properties/parts": {
  "type": [
   "object"
  ],
  "title": "Parts",
  "example": "{magnet: {kind: bought}}"
 },
 "#/$defs/shop/properties/parts/additionalProperties": {
  "ref": "#/$defs/part"
 }
}
