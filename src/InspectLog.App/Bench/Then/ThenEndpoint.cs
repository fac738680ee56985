using InspectLog.App.Access;
using InspectLog.App.Media;
using InspectLog.App.Ui;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench.Then;

/// <summary>The page that shows one place then and now.</summary>
public static class ThenEndpoint
{
    public static void MapThen(this IEndpointRouteBuilder app) =>
        app.MapInspection(Policies.Look, null, "/photos/{photo:long}/then").MapGet("/", ShowAsync).WithName("then-and-now");

    /// <param name="context">The request.</param>
    /// <param name="desk">The desk.</param>
    /// <param name="laid">Lays photos over each other.</param>
    /// <param name="photo">The photo at hand.</param>
    /// <param name="with">The photo it is compared with; the newest of another inspection where it is left out.</param>
    private static async Task<IResult> ShowAsync(HttpContext context, BenchDesk desk, LaidOverPhotos laid, long photo, long? with)
    {
        if (desk.Scene.Inspection.Find(photo) is not PhotoCapture mine)
        {
            return Results.NotFound();
        }

        var others = PlacePhotos.Of(desk.Scene.Vehicle, mine);
        var other = with is null ? Usual(others, mine) : others.FirstOrDefault(one => one.Photo.Sequence == with);
        if (with is not null && other is null)
        {
            return Results.NotFound();
        }

        var view = new ThenView(desk.Scene, mine, others, other, null, desk.Garage.Problems);
        return Page.Of<ThenPage, ThenView>(other is null ? view : view with
        {
            Laid = await laid.OfAsync(Hash(view.Then), Hash(view.Now), context.RequestAborted),
        });
    }

    /// <summary>The last one before it, else the next one after it.</summary>
    private static PhotoUse? Usual(IReadOnlyList<PhotoUse> others, PhotoCapture mine) =>
        others.FirstOrDefault(one => one.Photo.Time < mine.Time) ?? (others is [.., var last] ? last : null);

    private static string Hash(PhotoUse use) => use.Photo.Photo.Media.Sha256;
}
