using System.CommandLine;
using System.Text.Json;
using ComplianceApi.Api;
using ComplianceApi.Api.Questions;
using ComplianceApi.Api.Schemas;
using ComplianceApi.Commands.Terminal;
using Records;
using Wording;

namespace ComplianceApi.Commands;

/// <summary>What to record, before the visit.</summary>
internal static class QuestionsCommand
{
    public static Command Make()
    {
        var jobType = Common.OneOf("--job-type", "What the visit is for.", JobType.AnnualService);
        var jurisdiction = Common.OneOf("--jurisdiction", "Whose law applies (ISO 3166-2).", ShippedRules.Header.UsualJurisdiction, [.. ShippedRules.Jurisdictions.Select(place => place.Code)]);
        var fuel = Common.OneOf("--fuel", "The gas that the appliance burns.", Fuel.NaturalGas);
        var flueType = Common.OneOf("--flue-type", "The appliance's type of flue.", FlueType.RoomSealedFanned);
        var format = Common.OneOf("--format", "text: to read or to print; json: as the service serves them.", CheckFormat.Text);
        var overrides = Common.Overrides();
        var command = new Command("questions", "List what to record on a visit, before it, in the order in which it can be answered.") { jobType, jurisdiction, fuel, flueType, format, overrides };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            if (Check.Start(parsed.GetValue(overrides), parsed.InvocationConfiguration.Error) is not { } engine)
                return Common.Unusable;

            var questions = QuestionList.Of(
                engine, parsed.Value<JobType>(jobType), parsed.GetRequiredValue(jurisdiction), parsed.Value<Fuel>(fuel), parsed.Value<FlueType>(flueType), TimeProvider.System.GetUtcNow());
            if (parsed.Value<CheckFormat>(format) == CheckFormat.Json)
                output.WriteLine(JsonSerializer.Serialize(questions, ApiJson.Wire.QuestionList));
            else
                Write(new Sheet(output), questions);
            return Common.Good;
        });
        return command;
    }

    private static void Write(Sheet sheet, QuestionList questions)
    {
        sheet.Wrapped("", $"{Say.Of(questions.Total, "question")} for a visit of the kind: {Say.Value(questions.JobType)}, {questions.Jurisdiction}, {Say.Value(questions.Fuel)}, {Say.Value(questions.FlueType)}, by the law of {Say.Day(questions.AsOf)}. What is found on the visit may raise more.");
        EvaluationText.Questions(sheet, questions.Items);
        sheet.Blank();
    }
}
