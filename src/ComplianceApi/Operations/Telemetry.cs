using System.Diagnostics;
using System.Diagnostics.Metrics;
using Findings;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;
using Wire;

namespace ComplianceApi.Operations;

/// <summary>
/// What the service tells of itself: traces and counts, by kinds and never by what a record says. They are sent (OTLP) where
/// <c>OTEL_EXPORTER_OTLP_ENDPOINT</c> names somebody to receive them, and to nobody else.
/// </summary>
internal static class Telemetry
{
    /// <summary>Names the setting with the address to send to, as OpenTelemetry has it; empty: nothing is sent.</summary>
    public const string Setting = "OTEL_EXPORTER_OTLP_ENDPOINT";

    private const string Name = "ComplianceApi";

    private static readonly ActivitySource Source = new(Name);
    private static readonly Meter Counts = new(Name);
    private static readonly Counter<long> Evaluations = Counts.CreateCounter<long>("compliance.evaluations", "{evaluation}", "Single records judged, by outcome.");
    private static readonly Counter<long> Refusals = Counts.CreateCounter<long>("compliance.records.refused", "{record}", "Single records with faults.");
    private static readonly Counter<long> Chunks = Counts.CreateCounter<long>("compliance.audit.chunks", "{chunk}", "Parts of audits judged.");

    /// <summary>Sends what there is to tell, where that is asked for.</summary>
    public static void AddTo(WebApplicationBuilder builder)
    {
        if (string.IsNullOrWhiteSpace(builder.Configuration[Setting]))
            return;

        builder.Services.AddOpenTelemetry()
            .ConfigureResource(resource => resource.AddService(Name, serviceVersion: typeof(Telemetry).Assembly.GetName().Version!.ToString(3)))
            .WithTracing(tracing => tracing.AddSource(Name, "Microsoft.AspNetCore").AddOtlpExporter())
            .WithMetrics(metrics => metrics.AddMeter(Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "System.Runtime").AddOtlpExporter());
    }

    /// <summary>A span around the judging of one record.</summary>
    public static Activity? StartJudging() => Source.StartActivity("judge");

    /// <summary>A record was judged.</summary>
    public static void Judged(OverallOutcome outcome) => Evaluations.Add(1, new KeyValuePair<string, object?>("outcome", WireNames.Of(outcome)));

    /// <summary>A record had faults.</summary>
    public static void Refused() => Refusals.Add(1);

    /// <summary>A part of an audit was judged.</summary>
    public static void ChunkDone() => Chunks.Add(1);
}
