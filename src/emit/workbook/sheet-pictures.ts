import type { Drawing } from '../../report/cells.ts'
import type { ToPng } from '../pictures/svg-to-png.ts'
import type { PagedSheet } from './paginate.ts'
import { type PictureSize, pictureRim } from './picture-room.ts'
import { attribute } from './sheet-xml.ts'

const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
/** Source: ISO/IEC 29500-4, schemas dml-spreadsheetDrawing.xsd and dml-main.xsd; relationship types as there. */
const drawingSpace = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing'
const mainSpace = 'http://schemas.openxmlformats.org/drawingml/2006/main'
const typeSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const packageSpace = 'http://schemas.openxmlformats.org/package/2006/relationships'
/** Units of a drawing to the point. Source: ISO/IEC 29500-1 section 20.1.2.1 (914,400 to the inch). */
const unitsPerPoint = 12_700

/** What pictures add to a file: parts as text, pictures as bytes, by path. */
export interface PictureParts {
  readonly texts: ReadonlyMap<string, string>
  readonly bytes: ReadonlyMap<string, Uint8Array>
  /** Sheets with pictures, counted from 0: the drawing each has, as its relationships name it. */
  readonly drawingOf: ReadonlyMap<number, string>
}

/** A picture with its cell, counted from 0, and its size in points. */
interface Shown extends PictureSize {
  readonly id: string
  readonly row: number
  readonly column: number
}

/** The drawings of all sheets that show pictures. Gives: nothing without `toPng`. Cost: each picture is painted once. */
export function pictureParts(
  sheets: readonly PagedSheet[],
  pictures: ReadonlyMap<string, Drawing>,
  toPng: ToPng | null,
): PictureParts {
  const [texts, bytes] = [new Map<string, string>(), new Map<string, Uint8Array>()]
  const drawingOf = new Map<number, string>()
  for (const [sheet, paged] of sheets.entries()) {
    const shown = toPng ? shownOn(paged) : []
    if (!toPng || shown.length === 0) continue
    const name = `drawing${drawingOf.size + 1}.xml`
    drawingOf.set(sheet, `../drawings/${name}`)
    const media = shown.map(({ id }) => {
      const { svg, sizeMm } = pictures.get(id)!
      const file = `image${bytes.size + 1}.png`
      bytes.set(`xl/media/${file}`, toPng(svg, sizeMm))
      return file
    })
    texts.set(`xl/drawings/${name}`, drawingXml(shown, pictures))
    texts.set(`xl/drawings/_rels/${name}.rels`, mediaXml(media))
  }
  return { texts, bytes, drawingOf }
}

function shownOn({ placed, sizeOf }: PagedSheet): readonly Shown[] {
  return placed.rows.flatMap((row) =>
    row.cells.flatMap(({ cell, column }) => {
      const size = sizeOf(row)
      return cell.picture && size
        ? [{ id: cell.picture, row: row.number - 1, column: column - 1, ...size }]
        : []
    }),
  )
}

function drawingXml(shown: readonly Shown[], pictures: ReadonlyMap<string, Drawing>): string {
  const anchors = shown.map((one, at) => anchorXml(one, at + 1, pictures.get(one.id)!.says))
  return `${xmlHead}<xdr:wsDr xmlns:xdr="${drawingSpace}" xmlns:a="${mainSpace}" xmlns:r="${typeSpace}">${anchors.join('')}</xdr:wsDr>`
}

function anchorXml({ row, column, wide, high }: Shown, number: number, says: string): string {
  const off = pictureRim * unitsPerPoint
  const size = `cx="${Math.round(wide * unitsPerPoint)}" cy="${Math.round(high * unitsPerPoint)}"`
  const from = `<xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>${off}</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>${off}</xdr:rowOff></xdr:from>`
  const names = `<xdr:nvPicPr><xdr:cNvPr id="${number + 1}" name="Picture ${number}" descr="${attribute(says)}"/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>`
  const fill = `<xdr:blipFill><a:blip r:embed="rId${number}"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>`
  const shape = `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr>`
  return `<xdr:oneCellAnchor>${from}<xdr:ext ${size}/><xdr:pic>${names}${fill}${shape}</xdr:pic><xdr:clientData/></xdr:oneCellAnchor>`
}

function mediaXml(files: readonly string[]): string {
  const one = (file: string, at: number): string =>
    `<Relationship Id="rId${at + 1}" Type="${typeSpace}/image" Target="../media/${file}"/>`
  return `${xmlHead}<Relationships xmlns="${packageSpace}">${files.map(one).join('')}</Relationships>`
}

/** The list of content types with those of drawings and PNG. */
export function withPictureTypes(types: string, { drawingOf }: PictureParts): string {
  if (drawingOf.size === 0) return types
  const drawings = [...drawingOf.values()].map(
    (target) =>
      `<Override PartName="${target.replace('..', '/xl')}" ContentType="application/vnd.openxmlformats-officedocument.drawing+xml"/>`,
  )
  const own = `<Default Extension="png" ContentType="image/png"/>${drawings.join('')}`
  return types.replace('</Types>', `${own}</Types>`)
}
