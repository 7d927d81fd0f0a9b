namespace SecondOpinion.Duties;

/// <summary>As what a job closes.</summary>
internal enum ClosesAs
{
    Visit,
    Repair,
    Check,
    Service,
    Installation,
}

/// <summary>What the whole record shows, the worst first.</summary>
internal enum Whole
{
    Unsafe,
    Incomplete,
    Advisory,
    Pass,
}

/// <summary>What a second person says of a whole visit: its duties, its dangers, its outcome, and whether and as what it closes.</summary>
internal sealed record WholeOpinion(Whole Outcome, ClosesAs? ClosesAs, IReadOnlyList<Duty> Duties, Situation Situation, IReadOnlyList<Owed> Owed, IReadOnlyList<string> Advised)
{
    private static readonly Func<Visit, IEnumerable<Owed>>[] Kinds =
    [
        Identify.Of, Competence.Of, ExamineAfterWork.Of, ProveGasPath.Of, SealWhatIsLeft.Of, ProveCombustionCircuit.Of, ProveFlue.Of, ServiceFireSide.Of,
        FillTrap.Of, WaterCondensateElectrics.Of, RoomAir.Of, SafetyDevices.Of, LandlordRecord.Of, Commission.Of, Escapes.Of, MadeKnown.Of,
        DangerElsewhere.Of, NothingReached.Of, AlarmWithoutFault.Of, TemporaryBond.Of, AlarmOwed.Of, TraceFigures.Of, Holds.Of,
    ];

    public bool MayClose => ClosesAs is not null;

    /// <summary>Pointers that are asked for as must.</summary>
    public IEnumerable<string> Asks => Owed.Where(one => one.Holds).Select(one => one.Pointer).Distinct(StringComparer.Ordinal);

    public static WholeOpinion Of(Case one)
    {
        var visit = new Visit(one);
        var situation = visit.Situation = Situation.Of(visit);
        List<Owed> owed = [.. Kinds.SelectMany(duty => duty(visit)), .. situation.Dangers.SelectMany(danger => danger.Handling)];
        var mayClose = !owed.Exists(part => part.Holds);
        // What advises matters only where nothing graver is said, and costs the most.
        List<string> advice = mayClose && situation.State is null or DangerState.PutRight ? [.. Advice.Of(visit)] : [];
        return new WholeOpinion(
            OutcomeOf(visit, situation, owed, advice), mayClose ? Closing.Of(visit, situation, owed) : null, Duty.Of(owed), situation, owed, advice);
    }

    private static Whole OutcomeOf(Visit visit, Situation situation, List<Owed> owed, List<string> advice)
    {
        if (situation.Dangers.Any(danger => danger.State != DangerState.PutRight))
            return Whole.Unsafe;
        if (owed.Exists(part => part.Holds))
            return Whole.Incomplete;
        return situation.Dangers.Count > 0 || owed.Exists(part => part.State != DutyState.Met) || advice.Count > 0 || visit.SaysNothingReached || visit.Defects.Count > 0
            ? Whole.Advisory
            : Whole.Pass;
    }
}
