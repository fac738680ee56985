using System.Globalization;

namespace InspectLog.App.Tests.Web;

/// <summary>What a photo can be said to show, where much was recorded.</summary>
public sealed class PhotoChoiceTests
{
    private const int Cylinders = 6;

    [Fact]
    public async Task Bench_offers_the_newest_of_the_photos_own_place_first_and_no_endless_list()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        for (var i = 0; i < 48; i++)
        {
            await app.PostForRedirectAsync(
                $"{bench}/observations", ("check", "plug-condition"), ("condition", "worn"),
                ("cylinder", ((i % Cylinders) + 1).ToString(CultureInfo.InvariantCulture)));
        }

        var photo = await app.KeepPhotoAsync(bench, "plug-condition", "2");

        var offered = (await app.PageAsync(bench)).QuerySelectorAll($"#about-{photo.Sequence}-shows option").Select(one => one.GetAttribute("value")).ToList();
        var ofItsPlace = app.Inspection().Observations.Where(one => one.Body.Cylinder == 2).Reverse().Select(one => one.Sequence.ToString(CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(25, offered.Count);
        Assert.Equal("", offered[0]);
        Assert.Equal(ofItsPlace, offered.Skip(1).Take(ofItsPlace.Count));
    }

    [Fact]
    public async Task What_a_photo_shows_stays_offered_however_old_it_is()
    {
        await using var app = await TestApp.StartAsync();
        var bench = await app.StartInspectionAsync();
        await app.PostForRedirectAsync($"{bench}/observations", ("check", "cap-contacts"), ("condition", "burnt"), ("cylinder", "5"));
        var burnt = app.Inspection().Observations.Single().Sequence;
        for (var i = 0; i < 30; i++)
        {
            await app.PostForRedirectAsync($"{bench}/observations", ("check", "plug-condition"), ("condition", "worn"), ("cylinder", "2"));
        }

        var photo = await app.KeepPhotoAsync(bench, "plug-condition", "2");
        await app.PostForRedirectAsync($"{bench}/photos/{photo.Sequence}/shows", ("shows", burnt.ToString(CultureInfo.InvariantCulture)));

        var chosen = (await app.PageAsync(bench)).QuerySelector($"#about-{photo.Sequence}-shows option[selected]")!;
        Assert.Equal(burnt.ToString(CultureInfo.InvariantCulture), chosen.GetAttribute("value"));
    }
}
