using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectNotified), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)"), Cites("GSIUR-1998", "34(3)")]
[Title("Each defect is made known at once to the responsible person, the owner, or failing both the gas transporter or supplier")]
[Why("People who use or own the boiler cannot act on a defect that only the engineer knows. Regulation 26(9) has them told at once and, where neither can be reached, the LPG supplier or gas transporter instead.")]
[Serves(Part.MadeKnown)]
[Coverage(Coverage.Full, "the record states who was told")]
public sealed class DefectNotifiedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        look.Note(defect.NotifiedOn);
        if (defect.Told is not { } told)
        {
            return look.Missing($"the record does not show who was told of the defect", $"{look.Subject}/told")
                .Advise("Tell the responsible person and the owner at once; where neither can be reached, the gas transporter, or for liquefied gas the supplier.");
        }

        // The landlord or agent is the owner's side of premises that are let; premises of which nobody says so may be.
        var isOwnerTold = told.Contains(ToldParty.Owner) || told.Contains(ToldParty.LandlordOrAgent);
        var isResponsibleTold = told.Contains(ToldParty.ResponsiblePerson) || told.Contains(ToldParty.OtherOccupiers);
        if (!isOwnerTold && !isResponsibleTold && (told.Contains(ToldParty.Transporter) || told.Contains(ToldParty.Supplier)))
            return look.Pass($"neither the responsible person nor the owner is recorded as told, and the gas transporter or supplier was");
        if (!isOwnerTold && (!isResponsibleTold || visit.IsLet != false))
        {
            return look.Missing(
                    isResponsibleTold
                        ? (FormattableString)$"the responsible person was told of the defect, and the owner of the premises, who may be another, is not recorded as told"
                        : $"nobody who must know of the defect is recorded as told",
                    $"{look.Subject}/told")
                .Advise("Tell the responsible person and the owner at once; where neither can be reached, the gas transporter, or for liquefied gas the supplier.");
        }

        return defect.NotifiedOn > visit.Date
            ? look.Advisory($"the defect was made known on {defect.NotifiedOn}, {DayLimits.Days(defect.NotifiedOn.Value.DayNumber - visit.Date.DayNumber)} after the visit; the law says at once")
            : look.Pass($"the defect was made known");
    }
}
