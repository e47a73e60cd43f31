// The entry of the command: picks the verb, runs it, and ends with an exit code that says how it went.
import {Command} from "commander";
import {endQuietlyWhenNobodyReads, endWith} from "./ending.ts";
import {exitCodeHelp, mainHelp} from "./help.ts";
import {verbs} from "./verbs.ts";
import {version} from "./version.ts";

async function main(words: readonly string[]): Promise<void> {
  const [first, second] = words;
  if (first === "help" && second === "exit-codes") return void process.stdout.write(exitCodeHelp);
  const verb = verbs.find((one) => one.verb === (first === "help" ? second : first));
  if (!verb) return void (await mainCommand().parseAsync(words, {from: "user"}));
  const build = await verb.load();
  await build().parseAsync(first === "help" ? ["--help"] : words.slice(1), {from: "user"});
}

function mainCommand(): Command {
  const program = new Command("ticking")
    .description("Dates old workwear and denim from its marks, with the reasons shown.")
    .version(version(), "-V, --version", "print the version")
    .helpOption("-h, --help", "print this help")
    .helpCommand("help [verb]", "print the help of a verb, or of exit-codes")
    .addHelpText("after", mainHelp)
    .exitOverride();
  for (const {verb, summary} of verbs) program.command(verb).description(summary);
  return program;
}

endQuietlyWhenNobodyReads();
try {
  await main(process.argv.slice(2));
} catch (error) {
  endWith(error);
}
