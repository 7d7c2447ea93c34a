// Every job that changes records, killed at moments nobody chose: the library is as before or as
// after it, and a second try ends well. KILLS says how often. Imports, backups, restores and
// undoing have tests of their own, beside their code.

#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "indexer/erasure/erase.h"
#include "indexer/image/encode.h"
#include "indexer/intake/bin.h"
#include "indexer/intake/sort.h"
#include "indexer/intake/tagging.h"
#include "indexer/looks/consents.h"
#include "indexer/portfolio/export.h"
#include "indexer/store/erasure_table.h"
#include "indexer/worker/confined.h"
#include "tests/indexer/looks/whole_look.h"
#include "tests/indexer/store/version_1.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/killed.h"
#include "tests/support/records_dump.h"
#include "tests/support/seen_from_outside.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

using std::chrono::microseconds;
using Job = std::function<void(const Path& library)>;

const LocalTime later = at("2026-11-08T09:00");

// A look that can be signed off, one photo of which is a picture and may go on a website.
struct Studio : WholeLook {
    Studio() {
        const Bytes bytes = jpeg_bytes(four_quarters(120, 160), 90);
        Photo photo = example_photo("shown.jpg", taken_at("2026-11-07T11:00:00"));
        photo.file.sha256 = sha256(bytes);
        photo.tags.look = look;
        write_file(photo, {reinterpret_cast<const char*>(bytes.data()), bytes.size()});
        shown = library.photos().add(photo);
        library.credits().set(std::array{shown}, Credit{});
        library.settings().set(business_name_setting, "Pins and Paper");
        ConsentEntry entry;
        entry.client = mira;
        entry.said = ConsentSaid::granted;
        entry.said_on = date_of(noon);
        entry.shown = ShownAs::with_her_face;
        entry.recorded_at = noon;
        record_consent(library, entry, std::array{Use::website});
    }

    PhotoId shown;
};

class KilledJob : public testing::Test {
  protected:
    // Kills the job again and again, each time in a library as it was before it, and says how often
    // it found the library as before and as after.
    void try_job(const Job& job) {
        const Path base = made.folder / "library";
        const std::string before = state_of(fresh(base));
        const auto begun = std::chrono::steady_clock::now();
        const Path ended = fresh(base);
        EXPECT_TRUE(ends_well(start_apart([&] { job(ended); })));
        const std::string after = state_of(ended);
        ASSERT_NE(before, after) << "the job changes something";
        const auto took =
            std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begun);
        for (int i = 0; i < kills(4); ++i) {
            SCOPED_TRACE(i);
            const Path library = fresh(base);
            kill_after(microseconds{static_cast<long>(random() % took.count())},
                       [&] { job(library); });
            expect_as_before_or_after(library, before, after);
            job(library);
            EXPECT_EQ(state_of(library), after);
        }
    }

    virtual void expect_as_before_or_after(const Path& library, const std::string& before,
                                           const std::string& after) {
        EXPECT_EQ(wrong_from_outside(library), std::vector<std::string>{});
        const std::string now = state_of(library);
        EXPECT_TRUE(now == before || now == after) << "half done:\n" << now;
    }

    // What the records say, without what was undone or may be.
    static std::string state_of(const Path& folder) {
        Library library = Library::open(folder);
        std::string text;
        for (const auto& [table, rows] : dump_of(library.database())) text += table + '\n' + rows;
        return text;
    }

    Path fresh(const Path& base) {
        const Path place = folder / "library";
        std::filesystem::remove_all(place);
        std::filesystem::remove_all(folder / "out");
        std::filesystem::copy(base, place, std::filesystem::copy_options::recursive);
        return place;
    }

    Studio made;
    TemporaryFolder folder;
    std::minstd_rand random{7};
};

TEST_F(KilledJob, Tagging) {
    try_job([photos = made.photos](const Path& place) {
        Library library = Library::open(place);
        tag(library, photos, {.mirrored = true, .note = "seen by the window"});
    });
}

TEST_F(KilledJob, PuttingIntoTheBin) {
    try_job([photo = made.shown](const Path& place) {
        Library library = Library::open(place);
        if (library.bin().all().empty()) put_into_bin(library, std::array{photo}, date_of(later));
    });
}

TEST_F(KilledJob, SigningOff) {
    try_job([look = made.look](const Path& place) {
        Library library = Library::open(place);
        if (!library.sign_offs().standing(look)) {
            EXPECT_EQ(sign_off(library, look, later), std::vector<std::string>{});
        }
    });
}

TEST_F(KilledJob, RecordingWhatAClientAllowsWithItsPaper) {
    write_bytes(folder / "scan.pdf", std::as_bytes(std::span("signed by hand", 14)));
    try_job([client = made.mira, scan = folder / "scan.pdf"](const Path& place) {
        Library library = Library::open(place);
        if (library.consents().of(client).size() > 1) return;
        ConsentEntry entry;
        entry.client = client;
        entry.said = ConsentSaid::declined;
        entry.said_on = date_of(later);
        entry.recorded_at = later;
        record_said(library, {{entry, {Use::print}}}, scan);
    });
}

class KilledExport : public KilledJob {
  protected:
    // The ledger speaks of a picture before it is there, never after.
    void expect_as_before_or_after(const Path& library, const std::string&,
                                   const std::string&) override {
        EXPECT_EQ(wrong_from_outside(library), std::vector<std::string>{});
        Library opened = Library::open(library);
        const auto told = opened.ledger().all();
        if (!std::filesystem::exists(folder / "out")) return;
        for (const Path& file : files_in(folder / "out")) {
            if (file.extension() != ".jpg") continue;
            const std::string checksum = outside_detail::sha256_by_openssl(file);
            EXPECT_TRUE(std::ranges::any_of(
                told, [&](const Exported& one) { return one.sha256 == checksum; }))
                << file << " is out there and in no ledger";
        }
    }
};

TEST_F(KilledExport, OfAPictureForAWebsite) {
    const Path out = folder / "out";
    const auto send = [out, shown = made.shown](const Path& place) {
        Library library = Library::open(place);
        const auto decoder = make_confined_decoder();
        const std::array photos{library.photos().find(shown).value()};
        ExportWishes wishes;
        wishes.folder = out;
        export_photos(
            library, *decoder, [](cv::Mat&, const std::string&) {}, photos, wishes, later);
    };
    const Path base = made.folder / "library";
    for (int i = 0; i < kills(4); ++i) {
        const Path library = fresh(base);
        kill_after(microseconds{static_cast<long>(random() % 900'000)}, [&] { send(library); });
        expect_as_before_or_after(library, {}, {});
        send(library);
        expect_as_before_or_after(library, {}, {});
        EXPECT_FALSE(files_in(out).empty());
    }
}

TEST_F(KilledJob, WritingOutASignedOffLook) {
    const Path out = folder / "out" / "bun";
    made.sign();
    const Path base = made.folder / "library";
    for (int i = 0; i < kills(4); ++i) {
        const Path library = fresh(base);
        std::filesystem::create_directories(out.parent_path());
        const auto write_out = [&] {
            Library opened = Library::open(library);
            export_record(opened, made.look, out, later);
        };
        kill_after(microseconds{static_cast<long>(random() % 60'000)}, write_out);
        if (!std::filesystem::exists(out)) write_out();
        const std::string check =
            "cd " + shell_word(out) + " && sha256sum --check --strict --quiet manifest-sha256.txt";
        EXPECT_EQ(output_of(check), "");
        EXPECT_EQ(wrong_from_outside(library), std::vector<std::string>{});
    }
}

class KilledErasure : public KilledJob {
  protected:
    // It goes on when the library is opened, so what is half done then is finished first.
    void expect_as_before_or_after(const Path& library, const std::string& before,
                                   const std::string& after) override {
        {
            Library opened = Library::open(library);
            finish_erasures(opened);
        }
        KilledJob::expect_as_before_or_after(library, before, after);
        if (state_of(library) == before) return;
        EXPECT_EQ(without_record_from_outside(library), std::vector<std::string>{});
        const std::string bytes =
            output_of("grep -rlaF Okonjo " + shell_word(library) + " || true");
        EXPECT_EQ(bytes, "");
    }
};

TEST_F(KilledErasure, OfAClient) {
    try_job([client = made.mira](const Path& place) {
        Library library = Library::open(place);
        finish_erasures(library);
        if (!library.clients().find(client)) return;
        erase(library, plan_erasure(library, client, SharedPhotos::go), date_of(later));
    });
}

TEST(KilledMigration, TheRecordsAreOfOneVersionOrTheOther) {
    TemporaryFolder folder;
    const Path file = folder / "library" / "records.sqlite";
    std::minstd_rand random{7};
    for (int i = 0; i < kills(6); ++i) {
        std::filesystem::remove_all(folder / "library");
        std::filesystem::create_directories(folder / "library");
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
            .exec(version_1_sql);
        kill_after(microseconds{static_cast<long>(random() % 120'000)}, [&] { Database{file}; });
        outside_detail::RecordsFile records(file);
        EXPECT_EQ(records.rows("PRAGMA integrity_check").front().front(), "ok");
        Database database(file);
        EXPECT_EQ(ClientTable(database).all().at(0).name, "Mira Okonjo-Lindqvist");
        EXPECT_EQ(PhotoTable(database).all().at(0).tags.angle, Angle::left_three_quarter);
    }
}

}  // namespace
}  // namespace quarterturn
