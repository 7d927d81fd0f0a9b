using ComplianceApi.Api.Audits;
using ComplianceApi.Pages.Assets;
using Jobs.Summary;
using Kernel;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace ComplianceApi.Pages;

/// <summary>The summary of an audit, with every record that shows a danger, as one page of HTML that needs no other file. It is made from the objects that are served as JSON, and adds nothing to them.</summary>
internal sealed class AuditReport : IAuditReport
{
    /// <summary>The page shows its own style, and does nothing else.</summary>
    public string Policy { get; } =
        $"default-src 'none'; style-src '{PageFiles.WholeStyleHash}'; font-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <inheritdoc />
    public async Task<string> OfAsync(string title, AuditSummary summary, IReadOnlyList<UnsafeRecord> dangers, LimitBook limits)
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
