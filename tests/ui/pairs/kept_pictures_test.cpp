// The pictures that clients brought: listed, opened and removed.

#include <QListWidget>
#include <QSignalSpy>

#include "indexer/portfolio/inspiration.h"
#include "tests/support/files.h"
#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/pairs/file_pictures.h"
#include "ui/pairs/kept_pictures_page.h"

namespace quarterturn {
namespace {

class KeptPicturesTest : public PairsScreenTest {
  protected:
    Inspiration keep(const std::string& name, ClientId client, const char* when) {
        const Path file = open.example.folder / name;
        write_bytes(file, std::vector<std::byte>(100, std::byte(name.size())));
        return keep_inspiration(library(), file, client, at(when));
    }

    void open_kept() {
        add_pairs();
        show();
        click(QStringLiteral("Pictures from clients"));
    }

    QListWidget& list() {
        return *screen.findChild<KeptPicturesPage*>()->findChild<QListWidget*>();
    }
};

TEST_F(KeptPicturesTest, WithoutOneItIsSaidHowTheyAreKept) {
    open_kept();
    EXPECT_TRUE(says(QStringLiteral("No picture that a client brought is kept")));
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("3 pairs")));
}

TEST_F(KeptPicturesTest, EachSaysWhoseItIsAndSinceWhenTheNewestFirst) {
    keep("plait.jpg", open.example.mira, "2026-11-01T10:00");
    const ClientId wren = library().clients().add(client_called("Wren Aldous"));
    keep("low bun.jpg", wren, "2026-11-05T10:00");
    open_kept();
    ASSERT_EQ(list().count(), 2);
    EXPECT_TRUE(list().item(0)->text().contains(QStringLiteral("Wren Aldous")));
    EXPECT_TRUE(list().item(0)->text().contains(QStringLiteral("low bun.jpg")));
    EXPECT_TRUE(list().item(0)->text().contains(QStringLiteral("5 November 2026")));
    EXPECT_TRUE(list().item(1)->text().contains(QStringLiteral("Mira")));
    EXPECT_TRUE(says(QStringLiteral("never exported")));
    EXPECT_TRUE(list().hasFocus()) << "by keyboard at once";
    press(Qt::Key_Down);
    EXPECT_TRUE(says(QStringLiteral("plait.jpg  ·")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("cannot be shown")); }))
        << "a picture that cannot be read says so";
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(KeptPicturesTest, WhyNothingCanBeOpenedIsSaidOnce) {
    open.decoder.nothing_opens = true;
    keep("plait.jpg", open.example.mira, "2026-11-01T10:00");
    keep("low bun.jpg", open.example.mira, "2026-11-05T10:00");
    FilePictures files(open.session);
    QSignalSpy said(&files, &FilePictures::nothing_opens);
    QSignalSpy arrived(&files, &FilePictures::arrived);
    for (const Inspiration& kept : library().inspirations().all()) {
        files.at_hand(inspiration_file(library(), kept), 64);
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return arrived.count() == 2; }));
    EXPECT_EQ(said.count(), 1);
    open_kept();
    EXPECT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("cannot be shown.")); }));
}

TEST_F(KeptPicturesTest, OneIsRemovedOnlyAfterAQuestion) {
    const Inspiration kept = keep("plait.jpg", open.example.mira, "2026-11-01T10:00");
    keep("waves.jpeg", open.example.mira, "2026-11-05T10:00");
    open_kept();
    press(Qt::Key_Down);
    click(QStringLiteral("Remove it"));
    EXPECT_TRUE(says(QStringLiteral("cannot be undone")));
    EXPECT_EQ(problems_with(screen), QStringList());
    press(Qt::Key_Escape);
    EXPECT_FALSE(says(QStringLiteral("cannot be undone")));
    EXPECT_EQ(library().inspirations().all().size(), 2U);
    click(QStringLiteral("Remove it"));
    click(QStringLiteral("Remove this picture"));
    ASSERT_EQ(library().inspirations().all().size(), 1U);
    EXPECT_EQ(library().inspirations().all().front().name, "waves.jpeg");
    EXPECT_FALSE(std::filesystem::exists(inspiration_file(library(), kept)));
    EXPECT_EQ(list().count(), 1);
    EXPECT_TRUE(says(QStringLiteral("waves.jpeg")));
}

TEST_F(KeptPicturesTest, ThoseThatAreKeptAreFoundAlsoWhileThereIsNoPair) {
    keep("plait.jpg", open.example.mira, "2026-11-01T10:00");
    show();
    click(QStringLiteral("Pictures from clients"));
    EXPECT_EQ(list().count(), 1);
    press(Qt::Key_Escape);
    EXPECT_TRUE(says(QStringLiteral("A pair makes itself")));
}

}  // namespace
}  // namespace quarterturn
