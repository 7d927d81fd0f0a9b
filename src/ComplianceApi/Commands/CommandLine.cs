using System.CommandLine;

namespace ComplianceApi;

/// <summary>What can be said on the command line. Without a command the service starts and waits.</summary>
internal static class CommandLine
{
    /// <summary>Runs what <paramref name="args"/> ask for; null when they name no command, which means: serve.</summary>
    public static async Task<int?> RunAsync(string[] args)
    {
        var root = new RootCommand("Checks gas-boiler service records against law, standards and the maker's limits. Without a command: starts the service.")
        {
            CheckCommand(),
            DemoCommand(),
            AuditCommand.Make(),
            StoreCommand.Make(),
            KeysCommand.Make(),
        };
        var isAsked = args is [var first, ..] && (root.Subcommands.Any(command => command.Name == first) || first is "--help" or "-h" or "-?" or "--version");
        return isAsked ? await root.Parse(args).InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false }) : null;
    }

    private static Command CheckCommand()
    {
        var files = new Argument<FileInfo[]>("file") { Description = "Record files: JSON (one record) or NDJSON (one record a line).", Arity = ArgumentArity.OneOrMore };
        var overrides = new Option<FileInfo>("--overrides") { Description = "Your own limits, as the service reads them from Rules:Overrides." };
        var command = new Command("check", "Checks records and prints what was found. Exit code: 0 pass or advisory, 1 unsafe or incomplete, 2 unusable input.") { files, overrides };
        command.SetAction((parsed, stop) => Check.RunAsync(parsed.GetRequiredValue(files), parsed.GetValue(overrides), parsed.InvocationConfiguration.Output, stop));
        return command;
    }

    private static Command DemoCommand()
    {
        var once = new Option<bool>("--once") { Description = "End after the summary." };
        var port = new Option<int>("--port") { Description = "Port on 127.0.0.1.", DefaultValueFactory = _ => 5080 };
        var command = new Command("demo", "Starts the service on 127.0.0.1, posts an invented month of records to it and prints a summary.") { once, port };
        command.SetAction((parsed, stop) => Demo.RunAsync(parsed.GetValue(port), parsed.GetValue(once), parsed.InvocationConfiguration.Output, stop));
        return command;
    }
}
