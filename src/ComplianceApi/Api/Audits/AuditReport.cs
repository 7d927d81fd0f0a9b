using ComplianceApi.Pages;
using ComplianceApi.Pages.Assets;
using Jobs.Summary;
using Kernel;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace ComplianceApi.Api.Audits;

/// <summary>The summary of an audit, with every record that shows a danger, as one page of HTML that needs no other file. It is made from the objects that are served as JSON, and adds nothing to them.</summary>
internal static class AuditReport
{
    /// <summary>What the page may do: show its own style, and nothing else.</summary>
    public static string Policy { get; } =
        $"default-src 'none'; style-src '{PageFiles.WholeStyleHash}'; font-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    public static async Task<string> OfAsync(string title, AuditSummary summary, IReadOnlyList<UnsafeRecord> dangers, LimitBook limits)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var parameters = ParameterView.FromDictionary(new Dictionary<string, object?>(StringComparer.Ordinal)
        {
            [nameof(ReportPage.Title)] = title,
            [nameof(ReportPage.Summary)] = summary,
            [nameof(ReportPage.Dangers)] = dangers,
            [nameof(ReportPage.RatioLimits)] = RatioChart.LimitsOf(summary, limits),
        });
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<ReportPage>(parameters)).ToHtmlString());
    }
}
