using ComplianceApi;

// Commands that need no server (args[0] is their name) have their place here.

var builder = WebApplication.CreateBuilder(args);
builder.ListenOnLoopbackOnly();
builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
builder.Services.ConfigureHttpJsonOptions(ApiJson.Configure);
Startup.AddTo(builder.Services);
Documents.AddTo(builder.Services);

var app = builder.Build();
app.UseSecurityHeaders();
app.UseProblems();
app.UseLocalOnly();
app.UseDocuments();

var all = app.MapGroup("").Fails(ProblemKind.ForwardedRequest, ProblemKind.ForeignHost, ProblemKind.InternalError);
var v1 = all.MapGroup("/v1").WithStrictQuery();
v1.MapEvaluations();
v1.MapQuestions();
v1.MapCatalogue();
v1.MapProfiles();
all.MapProblems();
all.MapHealth();

try
{
    Startup.Demand(app.Services);
    await app.RunAsync();
    return 0;
}
catch (StartRefusedException refusal)
{
    await Console.Error.WriteLineAsync(refusal.Message);
    return 1;
}
