using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.UnsafeSituation;

[Id(RuleIds.DefectNotified), Topic(Topics.UnsafeSituation), Cites("GSIUR-1998", "26(9)")]
[Title("Each defect is made known at once to the responsible person, the owner, or failing both the gas transporter or supplier")]
[Why("People who use or own the boiler cannot act on a defect that only the engineer knows. Regulation 26(9) has them told at once and, where neither can be reached, the LPG supplier or gas transporter instead.")]
[Coverage(Coverage.MayUnderReport, "whether the owner was told as well is no member")]
public sealed class DefectNotifiedRule : DefectRule
{
    protected override Verdict Assess(Defect defect, Visit visit, Look look)
    {
        var day = look.Note(defect.NotifiedOn);
        if (look.Note(defect.ReportedTo) is null && day is null)
        {
            var provider = visit.Appliance.Fuel switch
            {
                null => "the gas transporter or supplier",
                Fuel.NaturalGas => "the gas transporter",
                _ => "the gas supplier",
            };
            return look.Missing($"the record shows neither to whom nor when the defect was made known", $"{look.Subject}/notifiedOn", $"{look.Subject}/reportedTo")
                .Advise($"Tell the responsible person and the owner at once; where neither can be reached, {provider}.");
        }

        return day > visit.Date
            ? look.Advisory($"the defect was made known on {day}, {DayLimits.Days(day.Value.DayNumber - visit.Date.DayNumber)} after the visit; the law says at once")
            : look.Pass($"the defect was made known");
    }
}
