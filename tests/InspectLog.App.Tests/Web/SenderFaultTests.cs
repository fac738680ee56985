using System.Net;
using System.Net.Http.Headers;
using System.Text;

namespace InspectLog.App.Tests.Web;

/// <summary>What is wrong by the fault of whoever sent it is answered as such, in a sentence, and nothing of it is
/// kept.</summary>
public sealed class SenderFaultTests
{
    [Fact]
    public async Task Form_with_a_sign_that_ends_texts_is_not_understood_wherever_it_goes()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        var before = app.Garage.Entries("marigold").Count;
        (string Address, string Field)[] forms =
        [
            ("/vehicles/new", "name"),
            ("/vehicles/marigold/describe", "owner"),
            ($"{bench}/notes", "text"),
            ($"{bench}/readings", "value"),
            ($"{bench}/checks/spark/leave-out", "reason"),
            ("/vehicles/marigold/limits/supply-voltage", "source"),
            ("/vehicles/marigold/parts/new", "name"),
            ("/instruments", "name"),
        ];

        foreach (var (address, field) in forms)
        {
            await NotUnderstoodAsync(app, address, $"name=Marigold&{field}=1%00+2", "application/x-www-form-urlencoded");
        }

        Assert.Equal(before, app.Garage.Entries("marigold").Count);
        Assert.Single(app.Garage.Vehicles());
        Assert.Empty(app.Garage.Workshop.Instruments);
    }

    [Fact]
    public async Task Upload_with_a_sign_that_ends_texts_is_refused_at_its_field()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        using var form = new MultipartFormDataContent { { new StringContent("1\0 2"), "text" } };

        var answer = await app.Client.PostAsync($"{bench}/notes", form, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("a sign that no keyboard types", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Captures);
    }

    [Fact]
    public async Task Form_with_too_many_fields_is_not_understood() =>
        await NotUnderstoodAsync(string.Join('&', Enumerable.Range(0, 1100).Select(i => $"f{i}=1")));

    [Fact]
    public async Task Form_with_too_long_a_name_of_a_field_is_not_understood() =>
        await NotUnderstoodAsync($"{new string('n', 3000)}=1&name=Marigold");

    [Fact]
    public async Task Form_with_too_long_a_value_is_not_understood() =>
        await NotUnderstoodAsync($"name={new string('n', 5_000_000)}");

    [Theory]
    [InlineData("multipart/form-data")]
    [InlineData("multipart/form-data; boundary=other")]
    [InlineData("multipart/form-data; boundary=\"\"")]
    public async Task Upload_whose_boundary_is_wrong_is_not_understood(string type) =>
        await NotUnderstoodAsync("--here\r\nContent-Disposition: form-data; name=\"name\"\r\n\r\nMarigold\r\n--here--\r\n", type);

    [Fact]
    public async Task Upload_that_ends_early_is_not_understood()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        const string cut = "--here\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\nabc";

        await NotUnderstoodAsync(app, $"{bench}/photos", cut, "multipart/form-data; boundary=here");

        Assert.Empty(app.Garage.FindVehicle("marigold")!.Inspections[0].Captures);
    }

    [Theory]
    [InlineData("7")]
    [InlineData("-1")]
    [InlineData("sideways")]
    [InlineData("Clockwise, Anticlockwise")]
    public async Task Rotation_that_is_not_in_the_list_is_refused(string rotation)
    {
        await using var app = await TestApp.StartAsync();

        var answer = await app.PostAsync("/vehicles/new", ("name", "Marigold"), ("cylinders", "6"), ("rotation", rotation));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Empty(app.Garage.Vehicles());
    }

    [Theory]
    [InlineData("/vehicles/marigold/inspections/one")]
    [InlineData("/vehicles/marigold/inspections/99999999999999999999")]
    [InlineData("/find?q=%00")]
    [InlineData("/find?q=%E2%80%AE%FF")]
    [InlineData("/words?phrase=%00")]
    [InlineData("/vehicles/marigold/journal?upto=99999999999999999999")]
    [InlineData("/vehicles/marigold/inspections/1?place=99999999999999999999")]
    public async Task Address_that_makes_no_sense_gets_a_page_and_is_no_fault_of_the_program(string address)
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();

        var answer = await app.Client.GetAsync(address, TestContext.Current.CancellationToken);

        Assert.True((int)answer.StatusCode < 500, $"{address} answered {answer.StatusCode}.");
        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task Signs_that_turn_the_writing_direction_are_left_out_of_what_is_kept()
    {
        await using var app = await TestApp.StartAsync();

        var vehicle = await app.AddVehicleAsync("Mari\u202Egold\u2066 \u0007the \u200Fsecond");

        Assert.Equal("Marigold the \u200Fsecond", Assert.Single(app.Garage.Vehicles()).Name);
        Assert.DoesNotContain("\u202E", (await app.PageAsync(vehicle)).Body!.TextContent, StringComparison.Ordinal);
    }

    private static async Task NotUnderstoodAsync(string body, string type = "application/x-www-form-urlencoded")
    {
        await using var app = await TestApp.StartAsync();
        await NotUnderstoodAsync(app, "/vehicles/new", body, type);
        Assert.Empty(app.Garage.Vehicles());
    }

    private static async Task NotUnderstoodAsync(TestApp app, string address, string body, string type)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);

        var answer = await app.Client.PostAsync(address, content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("nothing of it was saved", (await TestApp.ParseAsync(answer)).Body!.TextContent, StringComparison.Ordinal);
    }
}
