import { Command, CommanderError } from 'commander'
import { type Exit, exits, type Terminal, UsageError } from './terminal.ts'

const exitHelp = `
Exit codes: 0 fine or warnings, 1 errors in the project, 2 wrong use, 3 a fault in fettle.`

/** Runs the command line; gives the exit code. Commands are loaded when they are called. */
export async function runProgram(
  args: readonly string[],
  version: string,
  terminal: Terminal,
): Promise<Exit> {
  let exit: Exit = exits.fine
  const program = new Command('fettle')
    .description(
      'A compiler for build plans: a project file becomes a workbook that one person can buy, make and assemble from.',
    )
    .version(version, '-V, --version', 'print the version')
    .exitOverride()
    .configureOutput({ writeOut: terminal.out, writeErr: terminal.err })
    .addHelpText(
      'after',
      `
Examples:
  fettle new my-device                    begin a project from a template
  fettle check my-device/project.yaml     say what is wrong, with the mend
  fettle plan my-device/project.yaml      plan it and write the workbook
  fettle why my-device/project.yaml base  what sets the date of a part, step, cart or work
  fettle apart my-device/project.yaml lid how to get at a part for repair
${exitHelp}`,
    )
  const shared = (command: Command): Command =>
    command
      .option('--root <folder>', 'folder that no file may lie outside of')
      .option('--date <day>', 'first day, instead of the start in the project (YYYY-MM-DD)')
  const search = (command: Command): Command =>
    shared(command)
      .option('--effort <count>', 'most schedules tried (400, fewer for a large plan)')
      .option('--seed <number>', 'seed of the search and of what is drawn (1)')
  shared(
    program
      .command('check')
      .argument('<file>', 'project file, or - for standard input')
      .description('say what is wrong or doubtful, with the mend'),
  )
    .option('--json', 'print the findings as JSON')
    .addHelpText('after', '\nExample:\n  fettle check projects/optical-chopper/optical-chopper.yaml\n')
    .action(async (file: string, options) => {
      const { runCheck } = await import('./commands/check.ts')
      exit = runCheck(file, options, terminal)
    })
  search(
    program
      .command('plan')
      .argument('<file>', 'project file, or - for standard input')
      .description('check, plan and write the workbook'),
  )
    .option(
      '--out <file>',
      "name of the workbook; - for standard output (the project's name with .xlsx when silent)",
    )
    .option(
      '--samples <count>',
      'how often times and parcels are drawn to see how sure the date is (100); 0: not',
    )
    .option('--json', 'print the whole report as JSON; writes a workbook only with --out')
    .option('--force', 'write over a file that fettle did not write or that was changed since')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle plan device.yaml\n  fettle plan device.yaml --date 2026-03-09 --out march.xlsx\n  fettle plan device.yaml --json > report.json\n',
    )
    .action(async (file: string, options) => {
      const { runPlan } = await import('./commands/plan.ts')
      exit = await runPlan(file, options, terminal)
    })
  search(
    program
      .command('why')
      .argument('<file>', 'project file, or - for standard input')
      .argument('<thing>', 'a part, step, work, plate, cart or task')
      .description('say when a thing happens, what it waits for and what it costs'),
  )
    .addHelpText('after', '\nExample:\n  fettle why projects/optical-chopper/optical-chopper.yaml hub\n')
    .action(async (file: string, thing: string, options) => {
      const { runWhy } = await import('./commands/why.ts')
      exit = runWhy(file, thing, options, terminal)
    })
  shared(
    program
      .command('apart')
      .argument('<file>', 'project file, or - for standard input')
      .argument('<part>', 'a part, or a copy named under `as`')
      .description('say how to get at a part for repair, what that destroys, and the way back'),
  )
    .option('--json', 'print the way as JSON')
    .addHelpText('after', '\nExample:\n  fettle apart projects/dosing-pump/dosing-pump.yaml "piston seal"\n')
    .action(async (file: string, part: string, options) => {
      const { runApart } = await import('./commands/apart.ts')
      exit = runApart(file, part, options, terminal)
    })
  shared(
    program
      .command('pictures')
      .argument('<file>', 'project file, or - for standard input')
      .description('draw every step whose parts have meshes, and each assembly taken apart'),
  )
    .requiredOption('--out <folder>', 'folder for the pictures; it is made where there is none')
    .option('--one-scale', 'draw all steps of an assembly at one scale, instead of each as large as it fits')
    .option('--png', 'write each as PNG too (needs the optional package @resvg/resvg-js)')
    .option('--force', 'write over files that fettle did not write or that were changed since')
    .addHelpText('after', '\nExample:\n  fettle pictures device.yaml --out pictures\n')
    .action(async (file: string, options) => {
      const { runPictures } = await import('./commands/pictures.ts')
      exit = await runPictures(file, options, terminal)
    })
  program
    .command('new')
    .argument('<folder>', 'folder to be made')
    .option('--template <name>', 'template to begin from', 'minimal')
    .description('begin a project from a template')
    .addHelpText('after', '\nExamples:\n  fettle new my-device\n  fettle new my-device --template board\n')
    .action(async (folder: string, options) => {
      const { runNew } = await import('./commands/new.ts')
      exit = runNew(folder, options, terminal)
    })
  program
    .command('explain')
    .argument('<code>', 'code of a message, such as QTY01')
    .description('say why a message matters, with an example')
    .addHelpText('after', '\nExample:\n  fettle explain DEP01\n')
    .action(async (code: string) => {
      const { runExplain } = await import('./commands/explain.ts')
      exit = runExplain(code, terminal)
    })
  try {
    await program.parseAsync([...args], { from: 'user' })
    return exit
  } catch (cause) {
    return failed(cause, terminal)
  }
}

function failed(cause: unknown, terminal: Terminal): Exit {
  if (cause instanceof CommanderError) return cause.exitCode === 0 ? exits.fine : exits.usage
  if (cause instanceof UsageError) {
    terminal.err(`fettle: ${cause.message}\n`)
    return exits.usage
  }
  const says = cause instanceof Error ? cause.message : String(cause)
  terminal.err(
    `fettle: a fault in fettle, not in your project: ${says}\nplease report it with the project file and the command\n`,
  )
  return exits.fault
}
