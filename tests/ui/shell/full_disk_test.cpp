#include <QSignalSpy>

#include "tests/support/child.h"
#include "tests/support/fill_disk.h"
#include "tests/ui/shell/fixture.h"

namespace quarterturn {
namespace {

TEST(SessionOnAFullDisk, OpensALibraryToBeLookedAtAndSaysWhatToDo) {
    const TemporaryFolder folder;
    constexpr long bytes = 8'000'000;
    const auto answer = on_small_disk(folder.path(), bytes, [&]() -> std::string {
        const Path place = folder / "library";
        Library::create(place).clients().add(client_called("Mira Vale"));
        fill_disk_of(folder.path());
        NoDecoder decoder;
        Session session(real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); });
        const QSignalSpy said(&session, &Session::said);
        const std::string problem = session.open(place).toStdString();
        if (!problem.empty()) return problem;
        std::string told = session.library().clients().all().at(0).name + '\n';
        told += session.standing_words().toStdString() + '\n';
        session.change_records(
            {"added her", [](Library& l) { l.clients().add(client_called("Ada Holm")); }});
        return told + said.back().front().toString().toStdString();
    });
    if (!answer) GTEST_SKIP() << "The system lets us have no disk of our own.";
    const std::string why = "There is no room left on the disk that holds " +
                            (folder / "library").string() +
                            ": free some there, and open the library again. What was saved before "
                            "is kept.";
    EXPECT_EQ(*answer,
              "Mira Vale\nOnly to be looked at, nothing can be changed: " + why + '\n' + why);
}

}  // namespace
}  // namespace quarterturn
