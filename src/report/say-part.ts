import type { BoardWay, BoughtWay, Demand, Part, Project, Size, Way } from '../model/project.ts'

/** How a part comes to be, in plain words. */
export const kindWords: Readonly<Record<Way['kind'], string>> = {
  machined: 'machined',
  printed: 'printed',
  bought: 'bought',
  board: 'board',
  assembly: 'assembly',
}

/** Material and stock of a part; empty: it has none of its own. */
export function sayMaterial({ way }: Part, project: Project): string {
  if (way.kind === 'machined') {
    const stock = way.stock ? saySize(way.stock.size) : null
    return [way.material, stock].filter((each) => each !== null).join(', ')
  }
  if (way.kind !== 'printed') return ''
  const onPlate = way.plate === null ? undefined : project.plates.get(way.plate)?.job.material
  const material = way.job.material ?? onPlate ?? null
  return [material, way.volume?.text ?? null].filter((each) => each !== null).join(', ')
}

function saySize(size: Size): string {
  switch (size.shape) {
    case 'bar':
      return `bar ${size.across.text}, ${size.length.text} long`
    case 'plate':
    case 'block':
      return `${size.shape} ${size.length.text} x ${size.width.text} x ${size.thickness.text}`
    case 'volume':
      return size.volume.text
    case 'mass':
      return size.mass.text
  }
}

/** Where a part comes from: its vendor, the machines it passes, or the shelf. */
export function saySource({ way }: Part, demand: Demand): string {
  if (demand.needed > 0 && demand.toGet === 0) return 'own stock'
  if (way.kind === 'assembly') return 'assembly bench'
  if (way.kind === 'bought' || way.kind === 'board') return way.offers[0]?.vendor ?? 'nobody yet'
  const machines = way.route.flatMap((step) => {
    if (step.kind === 'setup') return step.machine === null ? [] : [step.machine]
    return step.kind === 'outside' ? [step.offer.vendor] : []
  })
  const printer = way.kind === 'printed' && way.job.machine !== null ? [way.job.machine] : []
  return [...new Set([...printer, ...machines])].join(', ')
}

/** What describes a part: as written, and what a board or a drawing adds. */
export function sayTechnical({ description, drawing, way, mass, massWorked }: Part): string {
  const board = way.kind === 'board' ? sayBoard(way) : []
  const sheet = drawing === null ? [] : [`drawing ${drawing}`]
  const all = [...(description === null ? [] : [description]), ...board, ...sheet]
  return [
    ...all,
    ...(mass === null ? [] : [massWorked.length > 0 ? `about ${mass.text}, worked out` : mass.text]),
  ].join(', ')
}

function sayBoard({ outline, layers, thickness }: BoardWay): readonly string[] {
  return [
    outline === null ? null : `${outline[0].text} x ${outline[1].text}`,
    layers === null ? null : `${layers} layers`,
    thickness === null ? null : `${thickness.text} thick`,
  ].filter((each) => each !== null)
}

/** What is bought on top because soldering loses some. */
function sayAttrition({ attrition }: BoughtWay): string | null {
  if (!attrition) return null
  const loss =
    'pieces' in attrition ? `${attrition.pieces}` : `${Number((attrition.fraction * 100).toPrecision(3))} %`
  return `${loss} more for what soldering loses`
}

/** Remarks of a part: note, way taken, tries. */
export function sayRemark({ note, choice, tries, way }: Part): string {
  const taken = choice ? `way taken: ${choice.taken} (not ${choice.left.join(', ')})` : null
  const tried = tries > 1 ? `${tries} started for each` : null
  const lost = way.kind === 'bought' ? sayAttrition(way) : null
  return [taken, tried, lost, note].filter((each) => each !== null).join('; ')
}
