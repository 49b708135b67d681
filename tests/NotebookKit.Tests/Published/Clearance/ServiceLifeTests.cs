using System.Text;
using NotebookKit.Clearance.Service;
using NotebookKit.Tests.Clearance.Service;

namespace NotebookKit.Tests.Published.Clearance;

public sealed class ServiceLifeTests : IDisposable
{
    private const string Code = "U.S. DOT, 49 CFR 180.205(i) and 180.209 Table 1, 2004";
    private const string Carbon = "bulletin quoting U.S. DOT exemption DOT-E 11194: life of 15 years, test every 5 years";

    // Written by another program (Python 3, json and hashlib), not by this library.
    private const string FromElsewhere = """
        {"format":"vessel service record","version":1,"vessel":"Curlew","serial":"C-1","check":"7f88aefdb9da353fb5d47b6c5e0dc43668f8bd4398e96ed656b8e0448386c047"}
        {"sequence":1,"at":"2026-03-01T18:00:00Z","vessel":"Curlew","serial":"C-1","kind":"made","data":{"day":"2026-02-20","batch":"braid 12, resin 7","dry-mass":"310 g","cured-mass":"412.5 g"},"by":"A. Member","notes":"","previous":"75b90807716a85b6d3c43bc1f9421e398d72c40e8e318a29d0bf5816452fedd4","check":"eb8859c666d51103d1968ea4f51fe5694949d1a72a8110aed448be1e17c40938"}
        {"sequence":2,"at":"2026-03-02T10:00:00Z","vessel":"Curlew","serial":"C-1","kind":"proved","data":{"day":"2026-03-02","held":"54 bar gauge","factor":"1.5","rules":"Club rule","record":"9f2c"},"by":"","notes":"","previous":"c3e561afa22dc239e0569a94f557a641904ec1156360fbfff64d7ab399a0cc55","check":"7de965359e89cb417132fcc5a448ef6624a05062da6811b8035c1d429d9889b6"}
        {"sequence":3,"at":"2026-05-01T09:30:00Z","vessel":"Curlew","serial":"C-1","kind":"filled","data":{"pressure":"36 bar gauge","temperature":"18 °C","hold":"120 s","medium":"gas"},"by":"A. Member","notes":"first \"fill\"","previous":"8258491d96e439ae9a6054babd996ee646840bb2d25a8924b145899cd96bdac0","check":"e70726aaf3e5b22d4e535a929dd10f44cfebae156d8460a3a25a738b3a03857d"}

        """;

    private readonly SampleRecord sample = new();

    public void Dispose() => sample.Dispose();

    [Fact]
    [PublishedCase("FIPS180", "NIST, FIPS 180-2, Secure Hash Standard, 2002, appendix B.1: SHA-256 of \"abc\"")]
    public void A_fingerprint_is_SHA_256() =>
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", ServiceLine.Fingerprint("abc"u8));

    [Fact]
    [PublishedCase("FIPS180", "the same events spelled and chained by Python 3's json and hashlib")]
    public void Another_program_writes_the_same_file_byte_for_byte()
    {
        var elsewhere = Encoding.UTF8.GetBytes(FromElsewhere);
        var record = ServiceRecordReader.Read(elsewhere, "35558d4bacdec93d298262eab2edc90c4dd445d902ae06275a155f765fdb6e2c");
        Assert.Empty(record.Findings);
        Assert.Equal("35558d4bacdec93d298262eab2edc90c4dd445d902ae06275a155f765fdb6e2c", record.HeadFingerprint);
        foreach (var happened in record.Events) sample.File.Append(happened);
        Assert.Equal(elsewhere, File.ReadAllBytes(sample.Path));
    }

    [Theory]
    [PublishedCase("L57", Code)]
    [InlineData(4379, ServiceStanding.InService)]
    [InlineData(4380, ServiceStanding.Grounded)]
    public void A_3HT_cylinder_is_condemned_at_4380_pressurisations(int pressurisations, ServiceStanding standing)
    {
        var made = SampleRecord.Made("2026-02-20");
        var fills = Enumerable.Repeat(SampleRecord.Filled("2026-04-01"), pressurisations - 1);
        var status = SampleRecord.Of([made, SampleRecord.Proved("2026-03-02"), .. fills]).StatusOn(SampleRecord.Day("2026-04-02"),
            LifeLimits.AircraftCylinder);
        Assert.Equal(pressurisations, status.Pressurisations);
        Assert.Equal(standing, status.Standing);
    }

    [Fact]
    [PublishedCase("L57", Code)]
    public void A_3HT_cylinder_is_tested_every_3_years_and_condemned_at_24()
    {
        var status = Status("2026-11-27", "2026-11-27", LifeLimits.AircraftCylinder);
        Assert.Equal(1096, status.ProofDue!.Value.DayNumber - SampleRecord.Day("2026-11-27").DayNumber);
        Assert.Equal(SampleRecord.Day("2050-11-27"), status.LifeEnds);
    }

    [Theory]
    [PublishedCase("L58", Carbon)]
    [InlineData("2012-05-01", "2024-02-29", "2027-05-01", "2029-02-28")]
    [InlineData("2026-11-27", "2026-11-27", "2041-11-27", "2031-11-27")]
    public void A_wrapped_cylinder_lives_15_years_with_a_test_every_5(string made, string proved, string ends, string due)
    {
        var status = Status(made, proved, LifeLimits.CarbonCylinder);
        Assert.Equal((SampleRecord.Day(ends), SampleRecord.Day(due)), (status.LifeEnds, status.ProofDue));
    }

    [Fact]
    [PublishedCase("L58", "ISO 11439:2000, 4.1.3: service life of at most 20 years")]
    public void A_vehicle_cylinder_lives_20_years() =>
        Assert.Equal(SampleRecord.Day("2032-05-01"), Status("2012-05-01", "2012-05-01", LifeLimits.VehicleGasCylinder).LifeEnds);

    private static ServiceStatus Status(string made, string proved, LifeLimits limits) =>
        SampleRecord.Of([SampleRecord.Made(made) with { At = SampleRecord.Time(made) },
            SampleRecord.Proved(proved)]).StatusOn(SampleRecord.Day(proved), limits);
}
