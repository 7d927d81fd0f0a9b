using System.Globalization;
using System.Runtime.Serialization.Json;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Analyzers;

/// <summary>Makes <c>LimitIds</c>, a constant for each id of the <c>limits.json</c> that the project names as an additional file.</summary>
[Generator]
public sealed class LimitIdsGenerator : IIncrementalGenerator
{
    /// <inheritdoc />
    public void Initialize(IncrementalGeneratorInitializationContext context) =>
        context.RegisterSourceOutput(
            context.AdditionalTextsProvider
                .Where(static file => file.Path.EndsWith("limits.json", StringComparison.Ordinal))
                .Select(static (file, cancellationToken) => file.GetText(cancellationToken)?.ToString() ?? "")
                .Combine(context.CompilationProvider.Select(static (compilation, _) => compilation.AssemblyName ?? "Rules")),
            static (output, source) => output.AddSource("LimitIds.g.cs", SourceText.From(ClassOf(source.Left, source.Right), Encoding.UTF8)));

    private static string ClassOf(string json, string space)
    {
        var code = new StringBuilder()
            .Append("namespace ").Append(space).AppendLine(";").AppendLine()
            .AppendLine("/// <summary>The id of every limit in limits.json.</summary>")
            .AppendLine("public static class LimitIds").AppendLine("{");
        var isFirst = true;
        foreach (var limit in LinesOf(json).GroupBy(line => line.Id, StringComparer.Ordinal))
        {
            if (!isFirst)
                code.AppendLine();
            isFirst = false;
            foreach (var what in limit.Select(line => line.What).Distinct(StringComparer.Ordinal))
                code.Append("    /// <summary>").Append(new XText(what)).AppendLine(".</summary>");
            code.Append("    public const string ").Append(NameOf(limit.Key)).Append(" = \"").Append(limit.Key).AppendLine("\";");
        }

        return code.AppendLine("}").ToString();
    }

    // A file that is no JSON makes no ids: the compiler then names every place that wants one, and the catalogue's own reading says what is wrong.
    private static IEnumerable<(string Id, string What)> LinesOf(string json)
    {
        XElement root;
        try
        {
            using var reader = JsonReaderWriterFactory.CreateJsonReader(Encoding.UTF8.GetBytes(json), XmlDictionaryReaderQuotas.Max);
            root = XElement.Load(reader);
        }
        catch (XmlException)
        {
            return [];
        }

        return root.Elements().Select(line => ((string?)line.Element("id") ?? "", (string?)line.Element("what") ?? "")).Where(line => line.Item1.Length > 0);
    }

    /// <summary><c>co-co2-ratio</c> as <c>CoCo2Ratio</c>.</summary>
    private static string NameOf(string id) =>
        string.Concat(id.Split('-').Where(word => word.Length > 0).Select(word => char.ToUpper(word[0], CultureInfo.InvariantCulture) + word.Substring(1)));
}
