using InspectLog.Tests;

namespace InspectLog.Journal.Tests.Record;

public sealed class TestDataHashTests
{
    [Fact]
    public void Test_data_of_others_are_the_files_whose_hashes_are_listed() =>
        ListedHashes.Hold(Repository.PathOf("tests", "InspectLog.Journal.Tests", "TestData", "jcs"), "*");
}
