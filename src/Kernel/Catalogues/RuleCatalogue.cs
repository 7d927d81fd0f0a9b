using System.Reflection;
using Findings;

namespace Kernel.Catalogues;

/// <summary>
/// Every rule with its cases, the limits and the references: all that decides an answer. Refuses to exist with a gap, so that a rule
/// set which is not whole never judges a record.
/// </summary>
public sealed class RuleCatalogue
{
    private readonly Assembly _source;
    private readonly Dictionary<IComplianceRule, RuleFace> _faces;
    private readonly Dictionary<Call, int[]> _kindsOfCalls;
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _dutyKinds;
    private readonly byte[]? _overrides;
    private readonly string? _pagesAt;

    private RuleCatalogue(IRecordModel model, Assembly source, IReadOnlyList<IComplianceRule> rules, byte[]? overrides, string? pagesAt)
    {
        (Model, _source) = (model, source);
        (_overrides, _pagesAt) = (overrides, pagesAt);
        var shipped = source.ReadResource<List<LimitDefinition>>("limits.json");
        Header = HeaderOf(source);
        DutyKinds = source.ReadResource<List<DutyKind>>("duties.json");
        _dutyKinds = DutyKinds.Index().ToDictionary(entry => entry.Item.Kind, entry => entry.Index, StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
        Limits = new LimitBook(shipped, Overrides.Read(overrides, shipped, Header.DeployersTables), Header.DeployersTables);
        Jurisdictions = JurisdictionsOf(source);
        ExampleRecord = source.ReadResource("example-record.json");
        Reasons = source.ReadResource<ReasonBook>("reasons.json");
        Rules = [.. rules.Where(rule => rule is not (DutyRule or SituationRule)).OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        DutyRules = [.. rules.OfType<DutyRule>().OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        SituationRules = [.. CatalogueCheck.InstancesOf<SituationRule>(source.GetTypes()).Concat(rules.OfType<SituationRule>()).DistinctBy(rule => rule.GetType()).OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        All = [.. Rules.Concat(DutyRules).Concat(SituationRules).OrderBy(rule => rule.Info.Id, StringComparer.Ordinal)];
        _kindsOfCalls = DutyRules.OfType<DutyCallRule>().SelectMany(rule => rule.Calls).ToDictionary(call => call, call => call.Parts.Select(KindOf).Distinct().ToArray());
        References = new ReferenceBook(source.ReadResource<List<ReferenceDocument>>("references.json"), [.. Rules.Select(rule => rule.Info)]);
        _faces = All.OrderBy(rule => Topics.All.IndexOf(rule.Info.Topic)).Index()
            .ToDictionary(entry => entry.Item, entry => new RuleFace(entry.Item, entry.Index, References, pagesAt is null ? null : pagesAt + entry.Item.Info.Id));
        Cases = Rules.ToDictionary(rule => rule, rule => RuleCases.Of<RuleCase>(rule.Info), EqualityComparer<IComplianceRule>.Default);
        DutyCases = DutyRules.ToDictionary(rule => rule, rule => RuleCases.Of<DutyCase>(rule.Info), EqualityComparer<DutyRule>.Default);
    }

    /// <summary>The records that they judge.</summary>
    public IRecordModel Model { get; }

    /// <summary>Every rule of every set, sorted by id.</summary>
    public IReadOnlyList<IComplianceRule> All { get; }

    /// <summary>The rules that answer about a record, sorted by id: the demands, and of the situation those that conclude.</summary>
    public IReadOnlyList<IComplianceRule> Rules { get; }

    /// <summary>The rules of the duties, sorted by kind. Without any, everything that a rule asks for is a must.</summary>
    public IReadOnlyList<DutyRule> DutyRules { get; }

    /// <summary>The rules that infer what the rules of the situation match, sorted by id: all of the assembly, whichever rules are judged by, and those given besides.</summary>
    public IReadOnlyList<SituationRule> SituationRules { get; }

    /// <summary>The kinds of duty, in the order in which they are shown.</summary>
    public IReadOnlyList<DutyKind> DutyKinds { get; }

    /// <summary>Which reason counts for what was not done.</summary>
    public ReasonBook Reasons { get; }

    /// <summary>The cases of each rule of the duties.</summary>
    public IReadOnlyDictionary<DutyRule, IReadOnlyList<DutyCase>> DutyCases { get; }

    /// <summary>The cases of each rule that answers.</summary>
    public IReadOnlyDictionary<IComplianceRule, IReadOnlyList<RuleCase>> Cases { get; }

    /// <summary>Every limit.</summary>
    public LimitBook Limits { get; }

    /// <summary>How well the figures of the shipped limits are known.</summary>
    public LimitKnowledge Known => field ??= new LimitKnowledge(Limits.Definitions, [.. All.Select(rule => rule.Info)]);

    /// <summary>Every law and standard cited.</summary>
    public ReferenceBook References { get; }

    /// <summary>What it says of itself: version and days.</summary>
    public RuleSetHeader Header { get; }

    /// <summary>Whose law the rules hold, one folder of the rules each, in the order of their codes.</summary>
    public IReadOnlyList<Jurisdiction> Jurisdictions { get; }

    /// <summary>A complete, clean annual service as JSON: the record that every case starts from.</summary>
    public byte[] ExampleRecord { get; }

    /// <summary>Name, version and hashes.</summary>
    public RuleSetInfo Info => field ??= new RuleSetInfo
    {
        Id = Header.Id,
        Version = Header.Version,
        LawHash = LawText.HashOf(Law),
        CodeHash = CodeHash.Of(All, Model),
    };

    /// <summary>All that it demands.</summary>
    internal Law Law => new()
    {
        Header = Header,
        Rules = [.. All.Select(rule => rule.Info)],
        Calling = [.. DutyRules.OfType<DutyCallRule>()],
        Limits = Limits,
        References = References,
        Duties = DutyKinds,
        Reasons = Reasons,
    };

    /// <summary>Reads the catalogue of an assembly.</summary>
    /// <param name="model">The records that are judged.</param>
    /// <param name="source">Where rules and data files are.</param>
    /// <param name="overrides">The deployer's own limits as JSON; null: none.</param>
    /// <param name="pagesAt">Path below which each rule has a page under its id; null: they have none.</param>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(IRecordModel model, Assembly source, byte[]? overrides = null, string? pagesAt = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(source);
        return Checked(new RuleCatalogue(model, source, CatalogueCheck.InstantiateRules(source.GetTypes()), overrides, pagesAt), isWhole: true);
    }

    /// <summary>The catalogue of <paramref name="source"/> with <paramref name="rules"/> in place of all of its own.</summary>
    /// <exception cref="CatalogueException">It has a gap; every gap is named.</exception>
    public static RuleCatalogue Of(IRecordModel model, Assembly source, IReadOnlyList<IComplianceRule> rules, byte[]? overrides = null, string? pagesAt = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(rules);
        return Checked(new RuleCatalogue(model, source, rules, overrides, pagesAt), isWhole: false);
    }

    /// <summary>Whose law the rules of an assembly hold, in the order of their codes, without reading the rest.</summary>
    public static IReadOnlyList<Jurisdiction> JurisdictionsOf(Assembly source) =>
        [.. source.ReadResources<Jurisdiction>("/jurisdiction.json").OrderBy(place => place.Code, StringComparer.Ordinal)];

    /// <summary>What the rules of an assembly say of themselves, without reading the rest.</summary>
    public static RuleSetHeader HeaderOf(Assembly source) => source.ReadResource<RuleSetHeader>("rule-set.json");

    /// <summary>This catalogue with only <paramref name="rules"/> of it.</summary>
    public RuleCatalogue With(IReadOnlyList<IComplianceRule> rules) => Of(Model, _source, rules, _overrides, _pagesAt);

    /// <summary>The whole catalogue with other limits of the deployer in place of the present ones.</summary>
    /// <param name="overrides">The limits as JSON; null: none.</param>
    /// <exception cref="CatalogueException">They do not fit; every fault is named.</exception>
    public RuleCatalogue WithOverrides(byte[]? overrides) => Of(Model, _source, overrides, _pagesAt);

    /// <summary>The one part of the law that is no rule and that the visits ask for: an instance of its class in the rules' assembly.</summary>
    /// <typeparam name="T">What it is.</typeparam>
    /// <exception cref="CatalogueException">There is none, or more than one.</exception>
    public T Part<T>() => _source.GetTypes().Where(type => typeof(T).IsAssignableFrom(type) && !type.IsAbstract).ToList() is [var only]
        ? (T)Activator.CreateInstance(only)!
        : throw new CatalogueException([$"the rules' assembly must have exactly one {typeof(T).Name}"]);

    /// <summary>What the rule says of itself that gave <paramref name="finding"/>; null where it was read back from a store.</summary>
    public static RuleInfo? RuleBehind(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return (finding.Rule as RuleFace)?.Rule.Info;
    }

    /// <summary>The codes of <see cref="Jurisdictions"/>.</summary>
    public IReadOnlyList<string> JurisdictionCodes => field ??= [.. Jurisdictions.Select(place => place.Code)];

    /// <summary>Where the kind of which <paramref name="part"/> is a part stands among <see cref="DutyKinds"/>; -1: it is none that duties.json names.</summary>
    internal int KindOf(string part) =>
        _dutyKinds.TryGetValue(part.AsSpan(0, part.IndexOf('/', StringComparison.Ordinal) is >= 0 and var end ? end : part.Length), out var kind) ? kind : -1;

    /// <summary>The parts of duties that come back at the next visit where one put them off.</summary>
    internal IReadOnlySet<string> ComingBack => field ??= DutyRules.OfType<DutyCallRule>().SelectMany(rule => rule.Calls).Where(call => call.IsPutOffAgain)
        .SelectMany(call => call.Parts).ToHashSet(StringComparer.Ordinal);

    /// <summary>Id of the rule that brings them back; null: none does.</summary>
    internal string? BringsBack => field ??= DutyRules.OfType<DutyCallRule>().FirstOrDefault(rule => rule.Calls.Any(call => call.IsPutOffAgain))?.Info.Id;

    /// <summary>Where the kinds of what <paramref name="call"/> calls for stand among <see cref="DutyKinds"/>, each once.</summary>
    internal int[] KindsOf(Call call) => _kindsOfCalls[call];

    /// <summary>What all findings of a rule share.</summary>
    internal RuleFace FaceOf(IComplianceRule rule) => _faces[rule];

    private static RuleCatalogue Checked(RuleCatalogue catalogue, bool isWhole)
    {
        CatalogueCheck.Demand(catalogue, isWhole);
        return catalogue;
    }
}
