using Findings;
using Kernel;
using Records;
using Visits;

namespace Rules.Duties.Work;

/// <summary>A rule that infers from a record what was worked on. What the engineer states adds to it and takes nothing away.</summary>
[Topic(Topics.Paperwork), Coverage(Coverage.MayUnderReport, "work that left no trace in the record is not seen")]
public abstract class WorkRule : DutyFactRule<Visit, TouchedPart>;
