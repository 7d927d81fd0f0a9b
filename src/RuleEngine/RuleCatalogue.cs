using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Findings;
using RuleModel;
using ServiceRecords;

namespace RuleEngine;

/// <summary>
/// Every rule with its cases, the limits and the references: all that decides an answer. Refuses to exist with a gap, so that a rule
/// set which is not whole never judges a record.
/// </summary>
public sealed class RuleCatalogue
{
    private readonly Assembly _source;
    private readonly Dictionary<ComplianceRule, int> _ranks;

    private RuleCatalogue(Assembly source, IReadOnlyList<ComplianceRule> rules)
    {
        _source = source;
        Limits = new LimitBook(source.ReadResource<List<LimitDefinition>>("limits.json"));
        References = new ReferenceBook(source.ReadResource<List<ReferenceDocument>>("references.json"));
        ExampleRecord = source.ReadResource("example-record.json");
        Rules = [.. rules.OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        _ranks = Rules.OrderBy(rule => Topics.All.IndexOf(rule.Info.Topic)).Index().ToDictionary(entry => entry.Item, entry => entry.Index);
        Cases = Rules.ToDictionary(rule => rule, rule => RuleCases.Of(rule.Info.Type), EqualityComparer<ComplianceRule>.Default);
        Info = new RuleSetInfo
        {
            Id = "GB",
            Version = source.GetName().Version!.ToString(3),
            ContentHash = HashOf(source),
        };
    }

    /// <summary>The rules, sorted by id.</summary>
    public IReadOnlyList<ComplianceRule> Rules { get; }

    /// <summary>Where a rule's answers stand among others of the same outcome: by topic, then by id.</summary>
    public int RankOf(ComplianceRule rule) => _ranks[rule];

    /// <summary>The cases of each rule.</summary>
    public IReadOnlyDictionary<ComplianceRule, IReadOnlyList<RuleCase>> Cases { get; }

    /// <summary>Every limit.</summary>
    public LimitBook Limits { get; }

    /// <summary>Every law and standard cited.</summary>
    public ReferenceBook References { get; }

    /// <summary>A complete, clean annual service as JSON: the record that every case starts from.</summary>
    public byte[] ExampleRecord { get; }

    /// <summary>Name, version and content hash.</summary>
    public RuleSetInfo Info { get; }

    /// <summary>Reads the catalogue of an assembly.</summary>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(Assembly source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Of(source, CatalogueCheck.InstantiateRules(source.GetTypes()));
    }

    /// <summary>The catalogue of <paramref name="source"/> with <paramref name="rules"/> in place of all of its own.</summary>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(Assembly source, IReadOnlyList<ComplianceRule> rules)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(rules);
        var catalogue = new RuleCatalogue(source, rules);
        CatalogueCheck.Demand(catalogue);
        return catalogue;
    }

    /// <summary>This catalogue with only <paramref name="rules"/> of it.</summary>
    public RuleCatalogue With(IReadOnlyList<ComplianceRule> rules) => Of(_source, rules);

    /// <summary>An answer of <paramref name="rule"/> as a finding.</summary>
    internal Finding FindingOf(ComplianceRule rule, Answer answer) => new()
    {
        RuleId = rule.Info.Id,
        Topic = rule.Info.Topic,
        Outcome = answer.Verdict.Outcome,
        Title = rule.Info.Title,
        Message = answer.Verdict.Message is { } message ? WireText.Sentence(message) : null,
        Subject = answer.Subject,
        Evidence = answer.Verdict.Evidence.Count > 0 ? answer.Verdict.Evidence : null,
        Limit = answer.Verdict.Limit,
        Margin = answer.Verdict.Margin,
        Conformity = answer.Verdict.Conformity,
        ExpectedClass = answer.Verdict.ExpectedClass,
        Caution = answer.Verdict.Caution,
        Remedy = answer.Verdict.Remedy,
        References = rule.Info.Citations.Count > 0 ? References.Of(rule.Info) : null,
        Documentation = $"/v1/rules/{rule.Info.Id}",
    };

    private string HashOf(Assembly source)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in source.GetManifestResourceNames().Order(StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData(source.ReadResource(name));
        }

        // Builds are deterministic, so a module's version id stands for the code in it.
        var modules = Rules.Select(rule => rule.GetType().Module)
            .Concat([typeof(ComplianceRule).Module, typeof(RuleCatalogue).Module, typeof(Calculations.GasFamily).Module, typeof(ServiceRecord).Module])
            .Distinct();
        foreach (var module in modules.OrderBy(module => module.Name, StringComparer.Ordinal))
            hash.AppendData(module.ModuleVersionId.ToByteArray());

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
