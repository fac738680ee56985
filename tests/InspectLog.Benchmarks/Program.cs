using InspectLog.Benchmarks.Dictation;
using InspectLog.Benchmarks.Dictation.Reading;
using InspectLog.Benchmarks.Garages;
using InspectLog.Benchmarks.Measuring;
using InspectLog.Benchmarks.Phones;
using InspectLog.Benchmarks.Photos;
using InspectLog.Benchmarks.Searching;
using InspectLog.Benchmarks.Verifying;

return args switch
{
    ["dictation", .. var rest] => await DictationCommand.RunAsync(rest),
    ["reading", .. var rest] => ReadingCommand.Run(rest),
    ["measuring"] => MeasuringCommand.Run(),
    ["coverage", .. var rest] => CoverageCommand.Run(rest),
    ["phones", .. var rest] => await PhonesCommand.RunAsync(rest),
    ["search", .. var rest] => SearchCommand.Run(rest),
    ["garage", .. var rest] => await GarageCommand.RunAsync(rest),
    ["empty-app"] => await EmptyApp.RunAsync(),
    ["verify", .. var rest] => VerifyCommand.Run(rest),
    ["photos", .. var rest] => await PhotosCommand.RunAsync(rest),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("""
        Usage:
          dictation [--misses] [--baseline]    score the corpus as text, then its recordings (Debian's flac unpacks them);
                                               --baseline times bare Whisper.net with its defaults on them too
          dictation --text [--misses] [FILE…]  the texts only; of the part only scored no misses are shown
          dictation --voices [--every N] [--look]
                                               the part only scored (or the one to look at) spoken by Debian's flite in
                                               several voices, clean and in noise; every Nth utterance only (8 takes
                                               some ten minutes on two cores)
          dictation --fuzz COUNT               read that many generated texts on every core, and show the slowest
          reading FILE.jsonl [--sheet ID-or-FILE] [--misses]
                                               how the notes of a file are read: exact, wrong and unmarked, talk
          measuring                            time decisions (build with -c Release)
          coverage [TRIALS]                    how often value ± U holds the true value (100,000 trials of each case take
                                               some minutes)
          phones [COUNT] [MINUTES]             that many simulated phones (30) at work for so long (10), after some minutes of
                                               pairing them
          search [ENTRIES]                     time the index of a garage of that many entries (20,000)
          verify [ENTRIES]                     time the verifying of a journal of that many entries (100,000) against
                                               sha256sum on the same bytes
          garage [ENTRIES [PROGRAM]]           what a vehicle of that many entries (100,000) costs against one of a hundredth: starting
                                               (against an empty ASP.NET app), appending (against a bare write and fsync),
                                               pages and memory; of the program built with this, or of one made by
                                               src/make-program; takes some minutes
          photos [FILE.jpg]                    a photo of 12 megapixels to all copies and figures, against vipsthumbnail (Debian's
                                               libvips-tools); then thirty at once through the workers
        """);
    return 2;
}
