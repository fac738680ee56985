using System.Net.Http.Headers;
using InspectLog.App.Tests.Web;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Access;

/// <summary>Where a photo is used too is told to those alone who may see that vehicle.</summary>
public sealed class SamePhotoReachTests
{
    [Fact]
    public async Task Student_of_one_vehicle_hears_nothing_of_the_same_photo_on_another()
    {
        await using var app = await LanApp.StartAsync();
        var own = await app.AddInspectionAsync("Bramble");
        var others = await app.AddInspectionAsync("Teasel");
        var photo = await KeepAsync(app, own);
        await KeepAsync(app, others);
        var student = await app.PairAsync(role: "student", vehicle: own.Split('/')[2]);

        var owner = await LanApp.PageAsync(app.Workshop, $"{own}/photos/{photo}");
        var page = await LanApp.PageAsync(student, $"{own}/photos/{photo}");

        Assert.Contains("of Teasel", owner.QuerySelector("[data-same]")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector("[data-same]"));
        Assert.DoesNotContain("Teasel", page.Body!.InnerHtml, StringComparison.Ordinal);
    }

    private static async Task<long> KeepAsync(LanApp app, string bench)
    {
        using var file = new ByteArrayContent(PhotoSending.Picture()) { Headers = { ContentType = new MediaTypeHeaderValue("image/jpeg") } };
        using var form = new MultipartFormDataContent { { file, "photo", "photo.jpg" } };
        await app.Workshop.PostAsync($"{bench}/photos", form, TestContext.Current.CancellationToken);
        return Assert.IsType<PhotoCapture>(Assert.Single(Assert.Single(app.Garage.FindVehicle(bench.Split('/')[2])!.Inspections).Everything)).Sequence;
    }
}
