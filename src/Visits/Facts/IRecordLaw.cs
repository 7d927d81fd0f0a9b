using Findings;
using Records;

namespace Visits.Facts;

/// <summary>What the law makes of a record as a document: whose it is, and how long it is kept.</summary>
public interface IRecordLaw
{
    /// <summary>Fewest years that anything is kept.</summary>
    int FewestYearsKept { get; }

    /// <summary>How many further checks of the appliance end a landlord's duty to keep the record of one.</summary>
    int ChecksThatEndKeeping { get; }

    /// <summary>Is it a record that a landlord has to keep?</summary>
    bool IsLandlords(ServiceRecord record);

    /// <summary>Is it the record of a check that the law demands of a landlord, and was the check made? One that was broken off is none.</summary>
    /// <param name="record">The record.</param>
    /// <param name="said">What was said of it.</param>
    bool IsLandlordsCheck(ServiceRecord record, Evaluation said);
}
