using System.Net;
using Audits;
using Microsoft.AspNetCore.Mvc.Testing.Handlers;

namespace Api.Tests;

/// <summary>A browser shows a key once and is let in.</summary>
public sealed class SignInTests(KeyedService service) : IClassFixture<KeyedService>
{
    private const string Here = "http://localhost";

    private readonly HttpClient _browser = service.Inner.CreateDefaultClient(new CookieContainerHandler());

    [Fact]
    public async Task A_browser_that_has_shown_a_key_does_what_the_key_may_until_it_signs_out()
    {
        var key = await service.NewKey("a", KeyScope.Read);
        await KeyedService.Seen();

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
            await (await Send("/sign-out", origin)).Read(HttpStatusCode.BadRequest);
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
        await KeyedService.Seen();

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

    private async Task<HttpResponseMessage> SignIn(string key, string to, bool seen = true)
    {
        if (seen)
            await KeyedService.Seen();
        return await Send("/sign-in", Here, new FormUrlEncodedContent([new("key", key), new("to", to)]));
    }

    private Task<HttpResponseMessage> Send(string path, string? origin, HttpContent? content = null)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = content ?? Calls.Json(service.Inner.ExampleRecord) };
        if (origin is not null)
            request.Headers.Add("Origin", origin);
        return _browser.SendAsync(request);
    }
}
