using System.Net;
using Microsoft.AspNetCore.Mvc.Testing;

namespace Api.Tests;

/// <summary>The pages as they are answered; tests/Browser.Tests looks at them in a browser.</summary>
public sealed class PageTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _api = service.CreateClient();

    // Pages are no part of the published contract.
    private readonly HttpClient _pages = ((WebApplicationFactory<Program>)service).CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    [Theory]
    [InlineData("/")]
    [InlineData("/rules")]
    [InlineData("/rules?topic=combustion&words=ratio")]
    [InlineData("/rules/combustion-ratio")]
    [InlineData("/rules?set=duties")]
    [InlineData("/rules/combustion-circuit")]
    [InlineData("/rules/parts-fitted")]
    [InlineData("/rules/danger-stands")]
    public async Task A_page_takes_scripts_and_styles_only_from_files_of_this_service(string path)
    {
        var answer = await _pages.GetAsync(path);
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
        Assert.DoesNotContain("unsafe-", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.DoesNotMatch("""<style|style=|<script(?! type="module" src="/assets/)|\son\w+=|https?://""", html);
    }

    [Theory]
    [InlineData("/rules/no-such-rule", HttpStatusCode.NotFound)]
    [InlineData("/evaluations/none", HttpStatusCode.NotFound)]
    [InlineData("/appliances/none", HttpStatusCode.NotFound)]
    [InlineData("/audits/none", HttpStatusCode.NotFound)]
    [InlineData("/audits/none/records/1", HttpStatusCode.NotFound)]
    [InlineData("/rules?topic=combustoin", HttpStatusCode.BadRequest)]
    [InlineData("/rules?tpoic=combustion", HttpStatusCode.BadRequest)]
    public async Task An_address_that_leads_nowhere_says_so_on_a_page(string path, HttpStatusCode status)
    {
        var answer = await _pages.GetAsync(path);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task Fields_left_empty_are_taken_out_of_the_address()
    {
        var answer = await _pages.GetAsync("/rules?words=flue%20gas&topic=");

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/rules?words=flue%20gas", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task What_a_record_says_belongs_in_no_cache_and_stays_text()
    {
        const string Hostile = "<script>alert(1)</script><img src=x onerror=alert(2)>\"'";
        var evaluation = await (await _api.PostRecord(service.ExampleRecord.With(record => record["appliance"]!["model"] = Hostile))).Read(HttpStatusCode.Created);

        var answer = await _pages.GetAsync($"/evaluations/{evaluation["evaluationId"].Text()}");
        var html = await answer.Content.ReadAsStringAsync();

        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x onerror=alert(2)&gt;", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pages.css", "text/css")]
    [InlineData("text.woff2", "font/woff2")]
    [InlineData("check.js", "text/javascript")]
    public async Task A_file_of_the_pages_is_asked_for_again_only_by_its_tag(string name, string type)
    {
        var answer = await _pages.GetAsync($"/assets/{name}");
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);

        var again = new HttpRequestMessage(HttpMethod.Get, $"/assets/{name}") { Headers = { IfNoneMatch = { answer.Headers.ETag! } } };
        Assert.Equal(HttpStatusCode.NotModified, (await _pages.SendAsync(again)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _pages.GetAsync("/assets/..%2Fappsettings.json")).StatusCode);
    }
}
