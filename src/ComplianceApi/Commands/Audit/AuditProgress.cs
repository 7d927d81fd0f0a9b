using System.Diagnostics;
using Spectre.Console;
using Wording;

namespace ComplianceApi.Commands.Audit;

/// <summary>Shows on a terminal how far an audit is; says nothing where the error stream goes elsewhere.</summary>
internal static class AuditProgress
{
    /// <summary>Does the work, which tells how many bytes and records are behind it.</summary>
    public static async Task ShowAsync(TextWriter error, long bytes, Func<Action<long, long>, Task> work)
    {
        var place = new AnsiConsoleOutput(error);
        if (!place.IsTerminal)
        {
            await work((_, _) => { });
            return;
        }

        // By itself the library looks at the standard output, which may be piped while the error stream is a terminal.
        var isPlain = Environment.GetEnvironmentVariable("NO_COLOR") is { Length: > 0 };
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = place,
            Ansi = AnsiSupport.Yes,
            ColorSystem = isPlain ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
            Interactive = InteractionSupport.Yes,
        });
        var watch = Stopwatch.StartNew();
        await console.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn { Width = 24 }, new PercentageColumn(), new RemainingTimeColumn())
            .StartAsync(context =>
            {
                var task = context.AddTask("reading", maxValue: Math.Max(bytes, 1));
                return work((done, records) =>
                {
                    task.Value = done;
                    task.Description = $"{Say.Of(records, "record")}, {Say.Number((decimal)(records / Math.Max(watch.Elapsed.TotalSeconds, 0.001)))} a second";
                });
            });
    }
}
