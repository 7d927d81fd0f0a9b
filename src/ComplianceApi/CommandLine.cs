using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Commands;
using ComplianceApi.Commands.Audit;
using ComplianceApi.Commands.Demo;

namespace ComplianceApi;

/// <summary>What can be said on the command line. Without a command the service starts and waits.</summary>
internal static class CommandLine
{
    private const string Serve = "serve";

    private static readonly Dictionary<string, string[]> Examples = new(StringComparer.Ordinal)
    {
        ["check"] = ["check rules/example-record.json", "check monday.ndjson tuesday.ndjson --format json"],
        ["audit"] = ["audit month.ndjson", "audit month.csv --format csv > findings.csv", "audit month.ndjson --format junit > results.xml --report month.html"],
        ["questions"] = ["questions", $"questions --job-type landlordCheck --jurisdiction {ShippedRules.Jurisdictions[^1].Code} --fuel propane"],
        ["rules"] = ["rules", "rules --topic combustion", "rules combustion-ratio"],
        [Serve] = ["serve", "serve --urls http://127.0.0.1:5081 --Store:Path=other.db --Store:Create=true"],
        ["demo"] = ["demo --once", "demo --urls http://127.0.0.1:5081", "demo --save month.csv"],
    };

    /// <summary>Runs what <paramref name="args"/> ask for; null when that is to serve.</summary>
    public static async Task<int?> RunAsync(string[] args)
    {
        if (IsToServe(args))
            return null;

        var root = new RootCommand("Checks gas-boiler service records against law, standards and the maker's limits. It says what a record shows; it never says that a boiler is safe. Without a command it starts the service.")
        {
            Check.Make(),
            AuditCommand.Make(),
            QuestionsCommand.Make(),
            RulesCommand.Make(),
            ServeCommand(),
            DemoCommand.Make(),
            StoreCommand.Make(),
            KeysCommand.Make(),
        };
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new HelpWithExamples((HelpAction)help.Action!);
        var parsed = root.Parse(args);
        if (parsed.Action is ParseErrorAction)
        {
            foreach (var fault in parsed.Errors)
                await Console.Error.WriteLineAsync(fault.Message);
            await Console.Error.WriteLineAsync(parsed.CommandResult.Command == root ? "See: --help" : $"See: {parsed.CommandResult.Command.Name} --help");
            return Common.Unusable;
        }

        return await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
    }

    /// <summary>What of <paramref name="args"/> is for the service.</summary>
    public static string[] SettingsOf(string[] args) => args is [Serve, .. var settings] ? settings : args;

    /// <summary>Settings of the service look like options, a mistyped command does not.</summary>
    private static bool IsToServe(string[] args) => args switch
    {
        [] => true,
        [Serve, ..] => !args.Any(IsAboutItself),
        [var first, ..] => first.StartsWith('-') && !IsAboutItself(first),
    };

    private static bool IsAboutItself(string arg) => arg is "--help" or "-h" or "-?" or "/?" or "--version";

    private static Command ServeCommand() => new(Serve, "Start the service. Settings follow as --Name value or --Name=value, such as --urls, --Store:Path, --Store:Create, --Store:ConnectionString, --Keys:Required, --Rules:Overrides, --Audits:Workers; or come from the environment (Store__Path).");

    private sealed class HelpWithExamples(HelpAction help) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            var exitCode = help.Invoke(parseResult);
            if (Examples.TryGetValue(parseResult.CommandResult.Command.Name, out var examples))
            {
                var output = parseResult.InvocationConfiguration.Output;
                output.WriteLine("Examples:");
                foreach (var example in examples)
                    output.WriteLine($"  {example}");
                output.WriteLine();
            }

            return exitCode;
        }
    }
}
