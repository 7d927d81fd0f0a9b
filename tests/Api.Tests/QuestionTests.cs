using System.Net;
using Records.Members;

namespace Api.Tests;

public sealed class QuestionTests(ServiceInProcess service) : IClassFixture<ServiceInProcess>
{
    private readonly HttpClient _client = service.CreateClient();

    [Fact]
    public async Task Questions_come_in_the_order_in_which_they_can_be_answered()
    {
        var list = await _client.GetJson("/v1/questions");

        var asked = list["items"].Texts("pointer").Select(pointer => RecordMembers.Find(pointer)!.While).ToList();
        Assert.NotEmpty(asked);
        Assert.Equal(asked.Order(), asked);
        Assert.Equal(asked.Count, list["total"]!.GetValue<int>());
    }

    [Fact]
    public async Task Each_usual_reading_and_joint_has_its_own_questions()
    {
        var pointers = (await _client.GetJson("/v1/questions"))["items"].Texts("pointer").ToList();

        Assert.Contains("/combustion/readings/0/coPpm", pointers);
        Assert.Contains("/combustion/readings/1/coPpm", pointers);
        Assert.Contains("/disturbedJoints/0/renewed", pointers);
        Assert.Contains("/disturbedJoints/1/renewed", pointers);
    }

    [Fact]
    public async Task What_is_asked_depends_on_the_visit()
    {
        var annual = await _client.GetJson("/v1/questions?jobType=annualService&jurisdiction=GB-SCT&fuel=propane&flueType=roomSealedFanned");
        var check = await _client.GetJson("/v1/questions?jobType=landlordCheck");
        var openFlued = await _client.GetJson("/v1/questions?flueType=openFlued");

        Assert.Equal(("annualService", "GB-SCT", "propane"), (annual["jobType"].Text(), annual["jurisdiction"].Text(), annual["fuel"].Text()));
        Assert.Contains("/heatExchanger/inspected", annual["items"].Texts("pointer"));
        Assert.DoesNotContain("/heatExchanger/inspected", check["items"].Texts("pointer"));
        Assert.Contains("/combustion/airInlet/o2Percent", annual["items"].Texts("pointer"));
        Assert.DoesNotContain("/combustion/airInlet/o2Percent", openFlued["items"].Texts("pointer"));
    }

    [Theory]
    [InlineData("jobType=service")]
    [InlineData("jurisdiction=GB")]
    [InlineData("fuel=coal")]
    [InlineData("flueType=OpenFlued")]
    [InlineData("flue=openFlued")]
    public async Task A_kind_of_visit_that_is_none_is_refused(string query) =>
        Assert.Equal(HttpStatusCode.BadRequest, (await _client.GetAsync($"/v1/questions?{query}")).StatusCode);
}
