using System.Net;
using Microsoft.AspNetCore.Mvc.Testing.Handlers;
using Storage;
using Storage.Keys;

namespace Api.Tests.Keys;

/// <summary>A browser shows a key once and is let in.</summary>
public sealed class SignInTests(ServiceWithKeys service) : IClassFixture<ServiceWithKeys>
{
    private const string Here = "http://localhost";

    private readonly HttpClient _browser = service.Inner.CreateDefaultClient(new CookieContainerHandler());

    [Fact]
    public async Task A_browser_that_has_shown_a_key_does_what_the_key_may_until_it_signs_out()
    {
        var key = await service.NewKey("a", KeyScope.Read);
        await ServiceWithKeys.Seen();

        var signedIn = await SignIn(key, "/v1/audits?limit=1");

        Assert.Equal((HttpStatusCode.SeeOther, "/v1/audits?limit=1"), (signedIn.StatusCode, signedIn.Headers.Location!.OriginalString));
        Assert.Matches("^compliance-session=[A-Za-z0-9_-]{43}; path=/; samesite=strict; httponly$", Assert.Single(signedIn.Headers.GetValues("Set-Cookie")));
        await (await _browser.GetAsync("/v1/audits")).Read();
        await (await Send("/v1/evaluations", Here)).Read(HttpStatusCode.Forbidden);

        Assert.Equal(HttpStatusCode.SeeOther, (await Send("/sign-out", Here)).StatusCode);
        await (await _browser.GetAsync("/v1/audits")).Read(HttpStatusCode.Unauthorized);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/rules?topic=flue")]
    [InlineData("/evaluations/x")]
    public async Task A_page_without_a_key_leads_to_where_one_is_shown(string page)
    {
        await service.KeyOf("a", KeyScope.Read);

        var led = await service.Inner.CreateDefaultClient().GetAsync(page);

        Assert.Equal((HttpStatusCode.SeeOther, $"/sign-in?to={Uri.EscapeDataString(page)}"), (led.StatusCode, led.Headers.Location!.OriginalString));
        var form = await _browser.GetStringAsync(led.Headers.Location);
        Assert.Contains($"name=\"to\" value=\"{page}\"", form, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await _browser.GetAsync("/assets/pages.css")).StatusCode);
    }

    [Fact]
    public async Task What_another_site_has_the_browser_send_changes_nothing()
    {
        await SignIn(await service.NewKey("a", KeyScope.Admin), "/");

        foreach (var origin in new[] { null, "null", "https://localhost", "http://localhost:81", "http://localhost.example.org" })
        {
            await (await Send("/v1/evaluations", origin)).Read(HttpStatusCode.Unauthorized);
            foreach (var form in new[] { "/sign-in", "/sign-out" })
                await IsPage(await Send(form, origin), HttpStatusCode.BadRequest, "This form is not from here");
        }

        await (await Send("/v1/evaluations", Here)).Read(HttpStatusCode.Created);
    }

    [Fact]
    public async Task A_revoked_key_ends_what_was_begun_with_it()
    {
        var key = await service.NewKey("a", KeyScope.Read);
        await SignIn(key, "/");
        await (await _browser.GetAsync("/v1/audits")).Read();

        await service.Keys.RevokeAsync(KeyText.IdOf(key), ServiceInProcess.Now, CancellationToken.None);
        await ServiceWithKeys.Seen();

        await (await _browser.GetAsync("/v1/audits")).Read(HttpStatusCode.Unauthorized);
    }

    [Theory]
    [InlineData("//example.org")]
    [InlineData("/\\example.org")]
    [InlineData("https://example.org")]
    [InlineData("javascript:alert(1)")]
    [InlineData("")]
    public async Task It_leads_to_no_other_site(string to) =>
        Assert.Equal("/", (await SignIn(await service.NewKey("a", KeyScope.Read), to)).Headers.Location!.OriginalString);

    [Fact]
    public async Task A_wrong_key_opens_nothing_and_what_is_shown_again_is_text()
    {
        await service.NewKey("a", KeyScope.Read);

        var answer = await SignIn("000000000000.wrong", "/\"><script>alert(1)</script>", seen: false);

        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.DoesNotContain("<script>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_key_that_has_ended_is_told_so_to_who_holds_all_of_it()
    {
        var now = ServiceInProcess.Now;
        var expired = await service.Keys.AddAsync(new Tenant("a"), [KeyScope.Read], "", now, ServiceWithKeys.Past, CancellationToken.None);
        var revoked = await service.NewKey("a", KeyScope.Read);
        await service.Keys.RevokeAsync(KeyText.IdOf(revoked), now, CancellationToken.None);

        foreach (var ended in new[] { expired, revoked })
            await IsPage(await SignIn(ended, "/"), HttpStatusCode.Unauthorized, "Ask whoever runs the service for a new one.");
        await IsPage(await SignIn($"{KeyText.IdOf(expired)}.guess", "/", seen: false), HttpStatusCode.Unauthorized, "That is no key of this service.");
    }

    [Fact]
    public async Task What_is_no_form_is_refused_on_a_page() =>
        await IsPage(await Send("/sign-in", Here), HttpStatusCode.BadRequest, "This form cannot be read");

    [Fact]
    public async Task Too_many_tries_are_refused_on_a_page()
    {
        await service.KeyOf("a", KeyScope.Read);
        await using var strict = service.Inner.WithWebHostBuilder(builder => builder.UseSetting("Limits:RequestsPerMinute", "3"));
        var browser = strict.CreateDefaultClient();
        var tries = new List<HttpResponseMessage>();
        for (var i = 0; i < 8; i++)
            tries.Add(await browser.SendAsync(Asking("/sign-in", Here, new FormUrlEncodedContent([new("key", "000000000000.guess"), new("to", "/")]))));

        var refused = tries.First(answer => answer.StatusCode == HttpStatusCode.TooManyRequests);
        Assert.NotNull(refused.Headers.RetryAfter);
        await IsPage(refused, HttpStatusCode.TooManyRequests, "Wait a minute, go back and try again.");
    }

    [Fact]
    public async Task A_page_that_the_key_does_not_open_says_so_on_a_page()
    {
        await SignIn(await service.NewKey("a", KeyScope.Evaluate), "/");

        await IsPage(await _browser.GetAsync("/audits"), HttpStatusCode.Forbidden, "Your key does not open this");
    }

    private static async Task IsPage(HttpResponseMessage answer, HttpStatusCode status, string says)
    {
        Assert.Equal((status, "text/html"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Contains("style-src 'self'", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Contains(says, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> SignIn(string key, string to, bool seen = true)
    {
        if (seen)
            await ServiceWithKeys.Seen();
        return await Send("/sign-in", Here, new FormUrlEncodedContent([new("key", key), new("to", to)]));
    }

    private Task<HttpResponseMessage> Send(string path, string? origin, HttpContent? content = null) => _browser.SendAsync(Asking(path, origin, content));

    private HttpRequestMessage Asking(string path, string? origin, HttpContent? content)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = content ?? Calls.Json(service.Inner.ExampleRecord) };
        if (origin is not null)
            request.Headers.Add("Origin", origin);
        return request;
    }
}
