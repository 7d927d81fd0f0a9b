using System.Reflection;
using System.Text;
using ComplianceApi.Configuration;
using Findings;
using Jobs;
using Kernel;
using Microsoft.OpenApi;
using Records;
using Records.Members;
using Records.Metadata;
using Records.Values;
using Storage;
using Visits.History;
using Wire;

namespace ComplianceApi.Api.OpenApi;

/// <summary>The OpenAPI documents, made from the routes and the types, and the page that shows them.</summary>
public static class Documents
{
    private const string Title = "Gas boiler service records: compliance check";

    private static readonly string Description =
        "Checks the service record of a gas boiler against the rules in force on its date and answers with findings, what is missing, duties not yet due, "
        + "and the figures that were worked out. It says what the record shows; it never says that a boiler is safe. The maker's instructions, the law and "
        + "the codes in force where the boiler stands come first, and the judgement is the registered engineer's on site.\n\n"
        + "In requests an absent member means \"not recorded\", null is read as absent, an empty list states \"none\", and unknown members are refused. "
        + "Answers leave absent members out and may gain optional members; their words (x-extensible-enum) may become more, and one that you do not know is no pass. Numbers are exact decimals; the unit is in the member's name. "
        + "Answers are JSON whatever Accept asks for. Every body may come packed with gzip (Content-Encoding), and answers are packed with br or gzip as Accept-Encoding allows, streams of rows excepted. A number that a decimal cannot hold exactly (more than 28 digits) is refused.\n\n"
        + "What a schema cannot say is refused with 422 as well, with the codes outOfOrder (dates that cannot follow each other), boundsCrossed, oneOnly (two members of which one may be given), duplicateItem, unknownReference (nothing stored under that id, or no member of a record at that pointer), otherAppliance and reasonNeeded (what supersedes may name, and when it needs supersedesBecause), notYet (a visit that has not happened) and notExact; where an operation has further ones, it lists them as x-beyond-schema.\n\n"
        + "Of each section of a record x-member-class says what its members are to a judgement: "
        + string.Join("; ", Enum.GetValues<MemberClass>().Select(one => $"{WireNames.Of(one)} ({RecordMembers.All.Count(member => member.Class == one)} members): {MemberSchemas.Texts.Of(one)}"))
        + "\n\n"
        + "What is no HTTP, or has a longer path and query than 8 KiB, reaches no route: the server itself answers 400, 414 or 431, without a body.\n\n"
        + "Send the header Authorization: Bearer with your key. The scope that an operation needs stands with it; a key with the scope admin opens all. What is stored "
        + "belongs to the tenant of the key: whatever is another tenant's is not found. A service that listens on its own machine only and has no keys asks for none, and then refuses requests that were forwarded or are for another host's name.";

    /// <summary>Name of the scheme in the documents.</summary>
    public const string KeyScheme = "key";

    private static readonly Assembly[] Described =
        [typeof(Documents).Assembly, typeof(ServiceRecord).Assembly, typeof(Evaluation).Assembly, typeof(LimitDefinition).Assembly, typeof(ReadingTrend).Assembly, typeof(ApplianceProfile).Assembly, typeof(AuditStatus).Assembly];

    /// <summary>Adds what makes the documents.</summary>
    public static void AddTo(IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc("v1", new OpenApiInfo { Title = Title, Version = typeof(Documents).Assembly.GetName().Version!.ToString(3), Description = Description });
            options.AddSecurityDefinition(KeyScheme, new OpenApiSecurityScheme
            {
                Type = SecuritySchemeType.Http,
                Scheme = "bearer",
                Description = "A key that whoever runs the service has made. Its scopes: read (read what is stored), evaluate (have single records judged), audit (have many judged), profiles (save makers' limits), admin (all of it).",
            });
            options.AddServer(new OpenApiServer { Url = "/", Description = "The service that gave this document." });
            foreach (var assembly in Described)
                options.IncludeXmlComments(assembly);

            options.MapType<decimal>(() => new OpenApiSchema { Type = JsonSchemaType.Number, Format = "decimal" });
            options.MapType<decimal?>(() => new OpenApiSchema { Type = JsonSchemaType.Number, Format = "decimal" });
            options.MapType<Timestamp>(() => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time" });
            options.MapType<Timestamp?>(() => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date-time" });
            // By code units whatever the culture: hexadecimal digits have one order in all of them.
            options.OrderActionsBy(action => Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(action.RelativePath ?? "")));
            options.CustomSchemaIds(SchemaId);
            options.SchemaFilter<MemberSchemas>();
            options.OperationFilter<RouteOperations>();
            options.DocumentFilter<WholeDocument>();
            options.DocumentFilter<OpenEnumerations>();
        });
    }

    /// <summary>Is there a page that shows the documents? In development, and where <c>Docs:Enabled</c> asks for it.</summary>
    internal static bool ShowsPage(IConfiguration configuration, IHostEnvironment environment) =>
        bool.TryParse(configuration[SettingNames.DocsEnabled], out var isAsked) ? isAsked : environment.IsDevelopment();

    /// <summary>Serves the documents and, where it is wanted, the page.</summary>
    public static void UseDocuments(this WebApplication app)
    {
        // The twin first: its path would fit the other template as well.
        app.UseSwagger(options =>
        {
            options.RouteTemplate = "openapi/{documentName}-3.0.json";
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_0;
        });
        app.UseSwagger(options =>
        {
            options.RouteTemplate = "openapi/{documentName}.json";
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
        });
        if (ShowsPage(app.Configuration, app.Environment))
        {
            app.UseSwaggerUI(options =>
            {
                options.RoutePrefix = "docs";
                options.IndexStream = () => typeof(Documents).Assembly.GetManifestResourceStream("docs.html");
                options.SwaggerEndpoint("/openapi/v1.json", "v1");
                options.ShowExtensions();
                options.ShowCommonExtensions();
            });
        }
    }

    private static string SchemaId(Type type) => type.IsGenericType
        ? type.GetGenericArguments()[0].Name + type.Name.Split('`')[0].Replace("SummaryTable", "Table", StringComparison.Ordinal)
        : type.Name;
}
