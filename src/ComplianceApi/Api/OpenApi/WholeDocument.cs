using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace ComplianceApi.Api.OpenApi;

/// <summary>What is said once for a whole document: what each group of routes is for.</summary>
internal sealed class WholeDocument : IDocumentFilter
{
    private static readonly Dictionary<string, string> Purposes = new(StringComparer.Ordinal)
    {
        ["Appliance profiles"] = "Makers' limits that you keep, by which records that name them are judged.",
        ["Appliances"] = "What had been said of an appliance over the years.",
        ["Audits"] = "Many records at once.",
        ["Calculations"] = "Single computations with their working.",
        ["Catalogue"] = "The rules with their cases, the limits by date, and the laws and standards.",
        ["Discovery"] = "Where a program finds the rest.",
        ["Due dates"] = "What falls due in a portfolio, as a list or a calendar.",
        ["Evaluations"] = "Check one record; read an evaluation back.",
        ["Health"] = "Is the service alive, and can it judge and store?",
        ["Problems"] = "What went wrong, and what to do about it.",
        ["Questions"] = "What to record, before the visit.",
        ["Rule changes"] = "What other limits, or the law of another day, would make of the stored visits.",
        ["Sampling"] = "How many to look at again, which ones, and what that shows of the whole.",
        ["Worth a look"] = "Where in the stored records of a period an auditor may look; no accusation.",
    };

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var tag in swaggerDoc.Tags ?? new HashSet<OpenApiTag>())
            tag.Description = Purposes.GetValueOrDefault(tag.Name!);
    }
}
