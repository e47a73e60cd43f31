// The page of the command's help, as it is printed in a terminal of 80 columns.
import type {Command} from "commander";
import {exitCodeHelp} from "../../cli/help.ts";
import {verbs} from "../../cli/verbs.ts";
import {page} from "./markdown.ts";

/** Help of every verb and of the verbs below it. */
export async function commandPage(): Promise<string> {
  const built = await Promise.all(verbs.map(async ({load}) => (await load())()));
  return page("The command", "the command's own help", [...built.flatMap((command) => helpsOf(command, "ticking")), "## exit codes", fence(exitCodeHelp)]);
}

function helpsOf(command: Command, before: string): string[] {
  const name = `${before} ${command.name()}`;
  return [`## ${name}`, fence(printed(command)), ...command.commands.flatMap((below) => helpsOf(below, name))];
}

function printed(command: Command): string {
  const lines: string[] = [];
  command.configureOutput({writeOut: (text) => void lines.push(text), getOutHelpWidth: () => 80});
  command.outputHelp();
  return lines.join("");
}

const fence = (text: string) => `\`\`\`text\n${text.trimEnd()}\n\`\`\``;
