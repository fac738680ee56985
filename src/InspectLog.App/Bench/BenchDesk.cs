using InspectLog.App.Forms;
using InspectLog.App.Listening;
using InspectLog.App.Ui;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;

namespace InspectLog.App.Bench;

/// <summary>What every endpoint of the bench needs: finding the inspection, recording in it, and showing it.</summary>
public sealed class BenchDesk(Garage garage, SheetLibrary sheets, ISpeechToText speech, BenchEvents events, TimeProvider time)
{
    private readonly HashSet<string> _used = [];
    private readonly List<EntryBody> _recorded = [];
    private BenchScene? _scene;
    private CaptureStamp? _stamp;

    public Garage Garage => garage;

    /// <summary>The inspection the request is about, with its vehicle and sheet, as it stood when the request came.
    /// </summary>
    public BenchScene Scene => _scene ?? throw new InvalidOperationException("No inspection was entered.");

    /// <summary>Who makes the request.</summary>
    public Author Person { get; private set; }

    /// <summary>Takes up the inspection a request is about; false where there is none.</summary>
    /// <param name="person">Who makes the request.</param>
    /// <param name="stamp">The stamp of what it brings; null where it brings none.</param>
    /// <param name="vehicleId">The vehicle.</param>
    /// <param name="number">Number of the inspection.</param>
    public bool Enter(Author person, CaptureStamp? stamp, string vehicleId, long number)
    {
        (Person, _stamp) = (person, stamp);
        return (_scene = BenchScene.Find(garage, sheets, vehicleId, number)) is not null;
    }

    /// <summary>The inspection as it stands now.</summary>
    public BenchScene Reread() => BenchScene.Find(garage, sheets, Scene.Vehicle.Id, Scene.Inspection.Number)!;

    /// <summary>Records entries in an open inspection; they are on disk when this returns. Pages that show the
    /// inspection are told. A capture that comes again, because the answer to it got lost or a button was pressed twice,
    /// is recorded already, and nothing is added.</summary>
    /// <param name="scene">The inspection.</param>
    /// <param name="decide">Gives the entries from the inspection as it stands while nothing else can be appended.</param>
    /// <param name="part">What of the request is recorded, where it brings several captures; null where it brings one.
    /// </param>
    /// <param name="afterClosing">Whether it may be added once the inspection is closed.</param>
    /// <exception cref="InspectionClosedException">It was closed in the meantime.</exception>
    /// <exception cref="JournalReadOnlyException">Nothing can be written at present.</exception>
    /// <exception cref="EntryRefusedException">The sheet does not have what an entry names.</exception>
    public BenchScene Record(
        BenchScene scene, Func<BenchScene, IReadOnlyList<EntryBody>> decide, string? part = null, bool afterClosing = false)
    {
        var number = scene.Inspection.Number;
        var stamp = part is null || _stamp is null ? _stamp : _stamp with { Id = $"{_stamp.Id}.{part}" };
        var vehicle = garage.Append(scene.Vehicle.Id, Person, state =>
        {
            var now = BenchScene.Of(state, sheets, number)!;
            if (stamp is not null && !_used.Contains(stamp.Id) && now.Inspection.Stamps.ContainsKey(stamp.Id))
            {
                return [];
            }

            IReadOnlyList<EntryBody> bodies = now.Inspection.IsClosed && !afterClosing
                ? throw new InspectionClosedException()
                : [.. Comparing.Settled(now, decide(now)).Select(body => body with { Stamp = stamp })];
            _recorded.AddRange(bodies);
            return bodies;
        });
        _used.UnionWith(stamp is null ? [] : [stamp.Id]);
        events.Publish(scene.Vehicle.Id, number, new BenchEvent.Changed());
        return BenchScene.Of(vehicle, sheets, number)!;
    }

    /// <summary>Records one entry and what follows from it.</summary>
    public BenchScene Record(BenchScene scene, EntryBody record) =>
        Record(scene, now => LooseEndRules.WithWhatFollows(now, [record]));

    /// <summary>Sequence of the first entry of the capture this request brings, where it was recorded already.</summary>
    public long? RecordedBefore(BenchScene scene) =>
        _stamp is { } stamp && scene.Inspection.Stamps.TryGetValue(stamp.Id, out var entry) ? entry : null;

    /// <summary>Whether the request brings a capture.</summary>
    public bool IsCapture => _stamp is not null;

    /// <summary>Hash of the last entry of the capture this request brings, once it is in the journal; null before, and where
    /// the request brings none.</summary>
    public string? HashOfCapture()
    {
        if (_stamp is not { Id: var id })
        {
            return null;
        }

        // It begins where the inspection noted its stamp; what is no part of an inspection has just been written.
        var entries = garage.Entries(Scene.Vehicle.Id);
        var inspection = garage.FindVehicle(Scene.Vehicle.Id)!.Inspection(Scene.Inspection.Number)!;
        var begins = inspection.Stamps.Where(stamp => stamp.Key.StartsWith(id, StringComparison.Ordinal)).Select(stamp => (long?)stamp.Value).Min();
        var oldest = begins is { } first ? entries.CountUpTo(first) - 1 : Math.Max(0, entries.Count - JustWritten);
        for (var place = entries.Count - 1; place >= oldest; place--)
        {
            if (entries[place].Body?.Stamp?.Id.StartsWith(id, StringComparison.Ordinal) == true)
            {
                return entries.HashAt(place);
            }
        }

        return null;
    }

    private const int JustWritten = 500;

    /// <summary>Answers with the bench: the fragment where htmx asked, the whole page on a plain GET, a redirect to it
    /// after a plain form, and status 422 where a form was refused.</summary>
    /// <param name="context">The request.</param>
    /// <param name="scene">The inspection.</param>
    /// <param name="form">The form that was refused; null when none was.</param>
    /// <param name="question">Typed numbers that are asked about; null when there are none.</param>
    /// <param name="at">The check and place to show, where the request itself says; null goes by the address.</param>
    /// <param name="amending">The form that was to put something right and was refused; null when none was.</param>
    public IResult Show(
        HttpContext context,
        BenchScene scene,
        RefusedForm? form = null,
        NumberQuestion? question = null,
        BenchFocus? at = null,
        AmendView? amending = null)
    {

        var focus = at ?? PostedPlace.Focus(context.Request);
        var refused = form is not null || question is not null || amending is not null;
        var isFragment = context.Request.Headers["HX-Request"] == "true";
        var isPost = HttpMethods.IsPost(context.Request.Method);
        context.Response.Headers.Vary = "HX-Request";
        if (!isFragment && !refused && isPost)
        {
            return Return(context, scene, focus, PostedPlace.FirstFinding(_recorded) ?? PostedPlace.Near(context));
        }

        var did = refused ? DidWords.Refused(form, question)
            : isPost ? DidWords.Recorded(_recorded, scene)
            : isFragment ? null
            : SaidOnce.Take(context, Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number));
        var built = BenchViewBuilder.Build(
            scene, focus, garage.Workshop, speech.Readiness, garage.Problems, form, question);
        var view = built with
        {
            Now = time.GetLocalNow(),
            Viewer = Person.Name,
            Amending = amending,
            Found = PostedPlace.Found(context.Request),
            Unfolded = PostedPlace.Asked(context.Request, PostedPlace.Unfolded),
            Ticked = PostedPlace.Asked(context.Request, PostedPlace.Ticked),
            Stretch = PostedPlace.Stretch(context.Request),
            Did = did,
            Undo = isPost && !refused ? PressUndo.Of(_recorded) : null,
            CautionsSeen = SeenCautions.Show(context, scene, built.Open.Check.Id, Person.Name),
        };
        var status = refused ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK;
        return isFragment ? Page.Of<BenchFragment, BenchView>(view, status) : Page.Of<BenchPage, BenchView>(view, status);
    }

    /// <summary>Answers a form that was sent as a page of its own: with the bench at a check and place, which says there
    /// what was recorded.</summary>
    /// <param name="context">The request.</param>
    /// <param name="scene">The inspection after it.</param>
    /// <param name="focus">The check and place to show.</param>
    /// <param name="near">Id of the part of the bench to show; null shows its top.</param>
    public IResult Return(HttpContext context, BenchScene scene, BenchFocus focus, string? near) =>
        ReturnTo(context, scene, PostedPlace.Address(scene, focus, near));

    /// <summary>Answers such a form with another page of the inspection, which says there what was recorded.</summary>
    public IResult ReturnTo(HttpContext context, BenchScene scene, string address)
    {
        SaidOnce.Keep(
            context, Links.Inspection(scene.Vehicle.Id, scene.Inspection.Number), DidWords.Recorded(_recorded, scene));
        return Results.Redirect(address);
    }
}
