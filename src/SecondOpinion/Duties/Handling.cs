using Findings;
using Records;
using SecondOpinion.Opinions;

namespace SecondOpinion.Duties;

/// <summary>What was done about one defect that endangers somebody.</summary>
internal sealed class Handling
{
    private readonly Visit _visit;
    private readonly Defect _defect;
    private readonly IReadOnlyList<Shown> _shown;
    private readonly string _at;
    private readonly List<Owed> _owed = [];

    private Handling(Visit visit, int place, IReadOnlyList<Shown> shown) =>
        (_visit, _defect, _at, _shown) = (visit, visit.Defects[place], $"/defects/{place}", shown);

    /// <summary>The danger that a defect records, with what it answers of the dangers shown.</summary>
    public static Danger Of(Visit visit, int place, IReadOnlyList<Shown> shown)
    {
        var handling = new Handling(visit, place, shown);
        var state = handling.State();
        return new Danger(handling._at, state, handling._owed);
    }

    private string Section => DefectPlace.SectionOf(_defect);

    /// <summary>The engineer's class, or the graver one to expect; a second opinion by somebody named settles it.</summary>
    private bool IsImmediate => _defect.Class == DefectClass.ImmediatelyDangerous
        || (string.IsNullOrWhiteSpace(_defect.SecondOpinionBy) && (_defect.Subject == "/flue/spillageTestPassed" || _shown.Any(one => one.Class == ExpectedClass.ImmediatelyDangerous)));

    private DangerState State()
    {
        _owed.Add(_visit.Must(DutyKind.MadeKnown, $"{_at}/told", MadeKnown.IsTold(_visit, _defect), _at));
        if (_defect.Action == DefectAction.Rectified)
            return PutRight();
        var isRefused = _defect.Permission == Consent.Refused && _defect.Action is null or DefectAction.None;
        var state = isRefused ? Refused() : TakenOutOfUse();
        Must($"{_at}/labelled", _defect.Labelled);
        if (!isRefused)
            Told();
        return state;
    }

    private void Must(string pointer, bool? good) => _owed.Add(_visit.Must(DutyKind.HandleDanger, pointer, good, _at));

    private void Told()
    {
        if (_defect.Permission == Consent.NobodyPresent)
            Must($"{_at}/copyLeft", _defect.CopyLeft);
        else
            Must($"{_at}/userToldNotToUse", _defect.UserToldNotToUse);
    }

    /// <summary>
    /// Whoever installs may not leave it connected unless it can be used safely, whoever signs (26(5), 33(2)). Else a signature for what is
    /// at risk, and the emergency provider's or supplier's reference for what is immediately dangerous.
    /// </summary>
    private DangerState Refused()
    {
        if (_visit.IsInstallation && _visit.IsInUse && !_visit.IsNothingReached)
        {
            _owed.Add(_visit.Must(DutyKind.Commission, $"{_at}/action", false, _at));
            Must("/appliance/stateOnLeaving", false);
            return DangerState.Standing;
        }

        if (IsImmediate)
            Must($"{_at}/emergencyReference", string.IsNullOrWhiteSpace(_defect.EmergencyReference) ? null : true);
        else
            Must($"{_at}/userSigned", _defect.UserSigned);
        return DangerState.LeftByRefusal;
    }

    private DangerState TakenOutOfUse()
    {
        if (_defect.Action is null or DefectAction.None)
        {
            Must($"{_at}/action", _defect.Action is null ? null : false);
            Must($"{_at}/permission", _defect.Permission is null ? null : true);
            return DangerState.Standing;
        }

        if (_visit.Record.Appliance.StateOnLeaving == StateOnLeaving.InUse && !IsIsolatedUpstream)
        {
            Must("/appliance/stateOnLeaving", false);
            return DangerState.Standing;
        }

        if (_visit.Record.Appliance.StateOnLeaving is null && !_visit.IsNothingReached && !IsIsolatedUpstream)
            Must("/appliance/stateOnLeaving", null);
        var isIsolated = IsIsolated();
        Must($"{_at}/isolatedAt", isIsolated);
        if (_visit.Record.Appliance.SharedFlue is null && Section is "flue" && !_visit.IsNothingReached)
            Must("/appliance/sharedFlue", null);
        if (_visit.Record.Appliance.SharedFlue == true && Section is "flue")
        {
            var isOthersTold = _defect.Told?.Any(told => told is ToldParty.OtherOccupiers or ToldParty.BuildingManager) == true ? true : (bool?)null;
            foreach (var kind in new[] { DutyKind.HandleDanger, DutyKind.MadeKnown })
                _owed.Add(_visit.Must(kind, $"{_at}/told", isOthersTold, _at));
        }

        if (IsImmediate && !IsSupplySide)
        {
            if (_defect.Action != DefectAction.Disconnected)
                Must(_defect.Class == DefectClass.ImmediatelyDangerous ? $"{_at}/action" : $"{_at}/class", false);
            foreach (var kind in new[] { DutyKind.HandleDanger, DutyKind.SealWhatIsLeft })
                _owed.Add(_visit.Must(kind, "/work/gaswaysSealed", _visit.Record.Work?.GaswaysSealed, _at));
            if (Section is "tightnessTests" or "disturbedJoints" or "escape")
                _owed.AddRange(TightProof.Asks(_visit, DutyKind.SealWhatIsLeft, _at));
        }

        return isIsolated == true || _defect.IsolatedAt is null ? DangerState.TakenOutOfUse : DangerState.Standing;
    }

    private bool IsIsolatedUpstream => _defect.IsolatedAt is IsolationPoint.PipeSection or IsolationPoint.EmergencyControl or IsolationPoint.Meter;

    /// <summary>An escape that is shut off upstream: "disconnected and sealed" is said of appliances.</summary>
    private bool IsSupplySide => IsIsolatedUpstream && DefectPlace.IsAboveTheBoiler(_visit, _defect);

    /// <summary>Is the thing that is dangerous isolated, where it is?</summary>
    private bool? IsIsolated() => _defect.IsolatedAt switch
    {
        IsolationPoint.NotIsolated => false,
        var at when DefectPlace.IsAboveTheBoiler(_visit, _defect) => at is null ? null : IsIsolatedUpstream,
        var at when Section == "electrical" => at == IsolationPoint.ElectricalSupply || _visit.Record.Electrical?.SupplyOff == true || IsParted ? true : at is null ? null : false,
        var at when IsOfUnknownSource => at is null ? null : at is IsolationPoint.OtherAppliances or IsolationPoint.EmergencyControl or IsolationPoint.Meter,
        IsolationPoint.ElectricalSupply => IsImmediate ? false : true,
        IsolationPoint.OtherAppliances => null,
        null when IsParted => true,
        null => null,
        _ => true,
    };

    /// <summary>A boiler that was parted from the gas needs no valve that isolates it.</summary>
    private bool IsParted => _defect.Action == DefectAction.Disconnected && _visit.Record.Appliance.StateOnLeaving == StateOnLeaving.Disconnected && Section != "electrical";

    /// <summary>Fumes in the room, and nothing on record that lets them out. What is written of the cause in words decides nothing.</summary>
    private bool IsOfUnknownSource => Section == "ambientCo" && _visit.Record.Flue is not ({ CaseSealOk: false } or { SpillageTestPassed: false } or { VisualOk: false })
        && !_visit.Joints.Any(joint => joint.Condition == SealCondition.Damaged);

    private DangerState PutRight()
    {
        // Gas: a test after, and below the valve the burner alight; a reading: a later one. Else somebody looked again, within the visit.
        if (_shown.Count > 0)
        {
            foreach (var shown in _shown)
            {
                Must(shown.Pointer, false);
                _owed.AddRange(Situation.AlsoAsked(_visit, shown).Select(ask => _visit.Must(DutyKind.HandleDanger, ask, null, _at)));
            }

            return DangerState.Standing;
        }

        var proof = Section switch
        {
            "combustion" when _visit.Record.Combustion?.Readings is { Count: > 0 } readings && readings.Any(one => CombustionOpinions.RatioOf(one) > 0.008m) => (null, true),
            "tightnessTests" or "escape" => (TightProof.Lacks(_visit) is [var lack, ..] ? lack : "/tightnessTests", TightProof.IsProved(_visit) ? true : null),
            _ => ($"{_at}/reexaminedAt", IsReexamined()),
        };
        if (proof.Item1 is { } pointer)
            Must(pointer, proof.Item2);
        if (proof.Item2 != true && !string.IsNullOrEmpty(_defect.Subject))
            Must(_defect.Subject, null);
        return proof.Item2 == true ? DangerState.PutRight : DangerState.Standing;
    }

    private bool? IsReexamined() => _defect.ReexaminedAt switch
    {
        null => null,
        { } again => again.Value <= _visit.Record.FinishedAt.Value
            && !(again.Value < _visit.Record.StartedAt?.Value)
            && !(again.Value < _defect.FoundAt?.Value),
    };
}
