using System.Reflection;
using Findings;
using RuleModel;

namespace RuleEngine;

/// <summary>
/// Every rule with its cases, the limits and the references: all that decides an answer. Refuses to exist with a gap, so that a rule
/// set which is not whole never judges a record.
/// </summary>
public sealed class RuleCatalogue
{
    private readonly Assembly _source;
    private readonly Dictionary<IComplianceRule, RuleFace> _faces;
    private readonly byte[]? _overrides;

    private RuleCatalogue(Assembly source, IReadOnlyList<IComplianceRule> rules, byte[]? overrides)
    {
        _source = source;
        _overrides = overrides;
        var shipped = source.ReadResource<List<LimitDefinition>>("limits.json");
        Limits = new LimitBook(shipped, Overrides.Read(overrides, shipped));
        References = new ReferenceBook(source.ReadResource<List<ReferenceDocument>>("references.json"));
        Header = source.ReadResource<RuleSetHeader>("rule-set.json");
        ExampleRecord = source.ReadResource("example-record.json");
        Rules = [.. rules.OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        _faces = Rules.OrderBy(rule => Topics.All.IndexOf(rule.Info.Topic)).Index()
            .ToDictionary(entry => entry.Item, entry => new RuleFace(entry.Item, entry.Index, References));
        Cases = Rules.ToDictionary(rule => rule, rule => RuleCases.Of(rule.Info.Type), EqualityComparer<IComplianceRule>.Default);
    }

    /// <summary>The rules, sorted by id.</summary>
    public IReadOnlyList<IComplianceRule> Rules { get; }

    /// <summary>The cases of each rule.</summary>
    public IReadOnlyDictionary<IComplianceRule, IReadOnlyList<RuleCase>> Cases { get; }

    /// <summary>Every limit.</summary>
    public LimitBook Limits { get; }

    /// <summary>Every law and standard cited.</summary>
    public ReferenceBook References { get; }

    /// <summary>What it says of itself: version and days.</summary>
    public RuleSetHeader Header { get; }

    /// <summary>A complete, clean annual service as JSON: the record that every case starts from.</summary>
    public byte[] ExampleRecord { get; }

    /// <summary>Name, version and hashes.</summary>
    public RuleSetInfo Info => field ??= new RuleSetInfo
    {
        Id = Header.Id,
        Version = Header.Version,
        LawHash = LawText.HashOf(Header, Rules.Select(rule => rule.Info), Limits, References),
        CodeHash = CodeHash.Of(Rules),
    };

    /// <summary>Reads the catalogue of an assembly.</summary>
    /// <param name="source">Where rules and data files are.</param>
    /// <param name="overrides">The deployer's own limits as JSON; null: none.</param>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(Assembly source, byte[]? overrides = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Checked(new RuleCatalogue(source, CatalogueCheck.InstantiateRules(source.GetTypes()), overrides), isWhole: true);
    }

    /// <summary>The catalogue of <paramref name="source"/> with <paramref name="rules"/> in place of all of its own.</summary>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(Assembly source, IReadOnlyList<IComplianceRule> rules, byte[]? overrides = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(rules);
        return Checked(new RuleCatalogue(source, rules, overrides), isWhole: false);
    }

    /// <summary>This catalogue with only <paramref name="rules"/> of it.</summary>
    public RuleCatalogue With(IReadOnlyList<IComplianceRule> rules) => Of(_source, rules, _overrides);

    /// <summary>The whole catalogue with other limits of the deployer in place of the present ones.</summary>
    /// <param name="overrides">The limits as JSON; null: none.</param>
    /// <exception cref="CatalogueException">They do not fit; every fault is named.</exception>
    public RuleCatalogue WithOverrides(byte[]? overrides) => Of(_source, overrides);

    /// <summary>What all findings of a rule share.</summary>
    internal RuleFace FaceOf(IComplianceRule rule) => _faces[rule];

    private static RuleCatalogue Checked(RuleCatalogue catalogue, bool isWhole)
    {
        CatalogueCheck.Demand(catalogue, isWhole);
        return catalogue;
    }
}
