using System.Text.Json.Serialization;
using Wire;

namespace Findings;

/// <summary>What one rule says about one subject of a record. Ordered from the gravest to the lightest.</summary>
[JsonConverter(typeof(WireEnumConverter<Outcome>))]
public enum Outcome
{
    /// <summary>The record shows, or cannot exclude, a danger (at risk or immediately dangerous).</summary>
    Unsafe,

    /// <summary>The rule failed to run. Never to be read as a pass.</summary>
    Error,

    /// <summary>The rule applies and the record lacks the evidence it needs.</summary>
    Missing,

    /// <summary>Not as it should be, and no danger on its own.</summary>
    Advisory,

    /// <summary>The record shows what the rule demands.</summary>
    Pass,

    /// <summary>The rule's own applicability says that it does not concern this visit.</summary>
    NotApplicable,
}

/// <summary>What the whole record shows.</summary>
[JsonConverter(typeof(WireEnumConverter<OverallOutcome>))]
public enum OverallOutcome
{
    /// <summary>At least one finding is unsafe.</summary>
    Unsafe,

    /// <summary>Evidence is missing, or a rule failed to run, and nothing is unsafe.</summary>
    Incomplete,

    /// <summary>Complete, with at least one advisory.</summary>
    Advisory,

    /// <summary>Every rule in force that applies has its evidence and is satisfied.</summary>
    Pass,
}

/// <summary>The class that the unsafe-situations procedure of the trade would be expected to give (IGEM/G/11).</summary>
[JsonConverter(typeof(WireEnumConverter<ExpectedClass>))]
public enum ExpectedClass
{
    /// <summary>One or more faults that could endanger life or property.</summary>
    AtRisk,

    /// <summary>Left connected or operated, an immediate danger to life or property.</summary>
    ImmediatelyDangerous,
}

/// <summary>Who set a limit.</summary>
[JsonConverter(typeof(WireEnumConverter<LimitOrigin>))]
public enum LimitOrigin
{
    /// <summary>The appliance maker's own figure, as the record or a stored profile states it.</summary>
    Maker,

    /// <summary>An Act or statutory instrument.</summary>
    Law,

    /// <summary>A published standard or procedure.</summary>
    Standard,

    /// <summary>Common practice of the trade, no published source.</summary>
    CommonPractice,

    /// <summary>The organisation that runs this service.</summary>
    Deployer,
}
