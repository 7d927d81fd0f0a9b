using Records.Metadata;

namespace Records;

/// <summary>Condensate trap and pipe.</summary>
public sealed class Condensate
{
    /// <summary>Whether the trap was cleaned.</summary>
    [Class(MemberClass.WorkDone)]
    [Ask("Was the condensate trap cleaned?", While.Open)]
    public bool? TrapCleaned { get; init; }

    /// <summary>Whether the trap was refilled; a dry trap lets products out.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was the condensate trap refilled?", While.Open)]
    public bool? TrapRefilled { get; init; }

    /// <summary>Whether condensate was seen to run.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Was condensate seen running?", While.Running)]
    public bool? SeenRunning { get; init; }

    /// <summary>Internal diameter of the pipe, mm.</summary>
    [Quantity("mm", 0.1, 10_000)]
    [Class(MemberClass.Evidence)]
    [Ask("What is the internal diameter of the condensate pipe in mm?", While.OnSite)]
    public decimal? PipeInternalDiameterMm { get; init; }

    /// <summary>Whether any of it runs outside or in an unheated space.</summary>
    [Class(MemberClass.DecidingFact)]
    [Ask("Does the condensate pipe run outside?", While.OnSite)]
    public bool? RunsOutside { get; init; }

    /// <summary>Whether the outside part is insulated.</summary>
    [Class(MemberClass.Evidence)]
    [Ask("Is the condensate pipe insulated?", While.OnSite)]
    public bool? Insulated { get; init; }

    /// <summary>Fall towards the drain, mm for each metre; negative falls back.</summary>
    [Quantity("mm/m", -1000, 1000)]
    [Class(MemberClass.Evidence)]
    [Ask("What fall in mm per metre does the condensate pipe have?", While.OnSite)]
    public decimal? FallMmPerM { get; init; }
}
