using System.Globalization;
using System.Xml.Linq;
using Jobs.Summary;
using Kernel;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;
using Rules;
using Wording;

namespace ComplianceApi.Pages;

/// <summary>The CO/CO2 ratios of an audit as a histogram in SVG, with the limits that hold where the maker gives none. Drawn by OxyPlot.</summary>
internal static class RatioChart
{
    private const double Wide = 720, High = 300;

    // Stand-ins: the page's own colours take their place, so that the chart goes with light, dark and paper.
    private static readonly OxyColor Ink = OxyColor.FromRgb(0, 0, 1);
    private static readonly OxyColor Bars = OxyColor.FromRgb(0, 0, 2);
    private static readonly OxyColor Faint = OxyColor.FromRgb(0, 0, 3);

    private static readonly Dictionary<string, string> Colours = new(StringComparer.Ordinal)
    {
        ["rgb(0,0,1)"] = "currentColor",
        ["rgb(0,0,2)"] = "var(--link)",
        ["rgb(0,0,3)"] = "var(--rule)",
    };

    /// <summary>The limits of the ratio on the day from which <paramref name="summary"/> looks.</summary>
    public static IReadOnlyList<LimitDefinition> LimitsOf(AuditSummary summary, LimitBook limits) =>
    [
        .. limits.Overrides.Concat(limits.Definitions)
            .Where(limit => limit.Id is LimitIds.CoCo2Ratio or LimitIds.CoCo2RatioCeiling && limit.Max is not null
                && !(limit.InForceFrom > summary.LookedAtOn) && !(limit.InForceTo < summary.LookedAtOn))
            .DistinctBy(limit => limit.Id, StringComparer.Ordinal)
            .OrderBy(limit => limit.Max),
    ];

    /// <summary>The drawing, an svg element without a style of its own.</summary>
    public static string Of(RatioDistribution ratios, IReadOnlyList<LimitDefinition> limits)
    {
        var end = (double)(ratios.LastFrom + ratios.ClassWidth);
        var most = ratios.Classes.Select(one => one.Readings).DefaultIfEmpty(1).Max();
        var model = new PlotModel { PlotAreaBorderThickness = new OxyThickness(0), DefaultFontSize = 13, TextColor = Ink, Padding = new OxyThickness(4, 20, 12, 4) };
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Bottom,
            Minimum = 0,
            Maximum = end,
            MajorStep = 0.002,
            MinorTickSize = 0,
            AxislineStyle = LineStyle.Solid,
            AxislineColor = Ink,
            TicklineColor = Ink,
            AxisTitleDistance = 8,
            Title = "CO/CO2 ratio",
            LabelFormatter = value => value.ToString("0.###", CultureInfo.InvariantCulture),
        });
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Left,
            Minimum = 0,
            Maximum = most * 1.25,
            MinimumMajorStep = 1,
            IntervalLength = 50,
            MinorTickSize = 0,
            TicklineColor = Faint,
            AxisTitleDistance = 22,
            Title = "readings",
            MajorGridlineStyle = LineStyle.Solid,
            MajorGridlineColor = Faint,
            LabelFormatter = value => Say.Count((long)value),
        });
        var bars = new RectangleBarSeries { FillColor = Bars, StrokeThickness = 0 };
        foreach (var one in ratios.Classes)
            bars.Items.Add(new RectangleBarItem((double)one.From, 0, (double)(one.From + ratios.ClassWidth) - 0.00005, one.Readings));
        model.Series.Add(bars);

        // Few readings lie beyond the first limit, and those few matter most: a number says what a low bar cannot.
        foreach (var one in ratios.Classes.Where(one => one.From >= (limits.Count > 0 ? limits[0].Max : ratios.LastFrom)))
        {
            model.Annotations.Add(new TextAnnotation
            {
                Text = Say.Count(one.Readings),
                TextPosition = new DataPoint((double)(one.From + ratios.ClassWidth / 2), one.Readings),
                TextVerticalAlignment = VerticalAlignment.Bottom,
                StrokeThickness = 0,
                TextColor = Ink,
                FontSize = 12,
            });
        }

        foreach (var limit in limits)
        {
            model.Annotations.Add(new LineAnnotation
            {
                Type = LineAnnotationType.Vertical,
                X = (double)limit.Max!.Value,
                Color = Ink,
                LineStyle = LineStyle.Dash,
                Text = limit.Max.Value.ToString(CultureInfo.InvariantCulture),
                TextColor = Ink,
                TextOrientation = AnnotationTextOrientation.Horizontal,
                TextHorizontalAlignment = HorizontalAlignment.Left,
                TextVerticalAlignment = VerticalAlignment.Top,
            });
        }

        return WithoutStyles(new SvgExporter { Width = Wide, Height = High, IsDocument = false }.ExportToString(model));
    }

    /// <summary>The page's policy allows no style in an element, so each becomes attributes; sizes are left to the page.</summary>
    private static string WithoutStyles(string drawn)
    {
        var svg = XElement.Parse(drawn);
        svg.Attributes().Where(attribute => attribute.Name.LocalName is "width" or "height" or "version" or "style").Remove();
        svg.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {Wide} {High}"));
        svg.SetAttributeValue("aria-hidden", "true");
        foreach (var element in svg.Descendants().ToList())
        {
            foreach (var declaration in ((string?)element.Attribute("style") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries))
            {
                var (name, value) = (declaration[..declaration.IndexOf(':', StringComparison.Ordinal)].Trim(), declaration[(declaration.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim());
                element.SetAttributeValue(name, Colours.GetValueOrDefault(value, value));
            }

            element.Attributes().Where(attribute => attribute.Name.LocalName is "style" or "font-family").Remove();
            foreach (var attribute in element.Attributes().Where(attribute => Colours.ContainsKey(attribute.Value)))
                attribute.Value = Colours[attribute.Value];
        }

        return svg.ToString(SaveOptions.DisableFormatting);
    }
}
