namespace ComplianceApi.Hosting;

/// <summary>
/// A start that is refused (a port that is taken, an address that is none of this machine's own) ends with one line for its operator:
/// the host would log the same refusal with its stack traces first. What fails once the service listens is logged as ever.
/// </summary>
internal static class QuietStart
{
    private static readonly string[] Starters = ["Microsoft.Extensions.Hosting.Internal.Host", "Microsoft.AspNetCore.Server.Kestrel"];

    /// <summary>Keeps the log of a start silent; gives what is to be told once the service listens.</summary>
    public static Action StartQuietly(this ILoggingBuilder logging)
    {
        var listens = false;
        foreach (var starter in Starters)
            logging.AddFilter(starter, level => level >= LogLevel.Warning && Volatile.Read(ref listens));
        return () => Volatile.Write(ref listens, true);
    }
}
