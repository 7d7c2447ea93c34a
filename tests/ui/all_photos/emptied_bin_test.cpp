#include <QPushButton>
#include <QSignalSpy>

#include "indexer/intake/bin.h"
#include "tests/support/files.h"
#include "tests/ui/all_photos/all_photos_fixture.h"

namespace quarterturn {
namespace {

TEST_F(AllPhotosTest, WhatMayBeOfAPhotoThatWentIsNamedWhenTheBinIsEmptied) {
    add_photos();
    Photo namesake = example_photo("a.jpg");
    namesake.file.path = "photos/2027/a.jpg";
    namesake.file.sha256 = sha256("of another");
    library().photos().add(namesake);
    const Path changed = library().folder() / "photos/a (changed) (2).jpg";
    std::filesystem::create_directories(changed.parent_path());
    write_bytes(changed, std::as_bytes(std::span("changed")));
    put_into_bin(library(), {{first}}, open.session.today());
    show();
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("In the bin")), Qt::LeftButton);
    show_active(screen);
    QSignalSpy said(&open.session, &Session::said);
    QTest::mouseClick(with_text<QPushButton>(QStringLiteral("Empty the bin…")), Qt::LeftButton);
    for (QPushButton* button : screen.findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Empty the bin")) button->click();
    }
    EXPECT_TRUE(QTest::qWaitFor([&] { return !open.session.work(); }));
    EXPECT_TRUE(library().bin().all().empty());
    ASSERT_FALSE(said.isEmpty());
    const QString last_said = said.last().at(0).toString();
    EXPECT_TRUE(last_said.contains(QString::fromStdString(changed.string())))
        << qPrintable(last_said);
    EXPECT_TRUE(last_said.startsWith(QStringLiteral("Gone for good: 1 photo.")))
        << qPrintable(last_said);
    EXPECT_TRUE(std::filesystem::exists(changed));
}

}  // namespace
}  // namespace quarterturn
