// What the window leaves out while it shows pairs to a client.

#include <QLabel>
#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/main_window.h"

namespace quarterturn {
namespace {

TEST(WhileAClientLooks, NothingOfHersIsSaidAndNoKeyUndoes) {
    OpenSession open;
    auto* shown = new SayingScreen;
    MainWindow window(open.session,
                      {{Moment::coming_up, QStringLiteral("What's coming up"),
                        [&](Session&) -> Screen* { return shown; }}},
                      [](Session&) -> QWidget* { return new QLabel; });
    show_active(window);
    const auto says = [&](const QString& words) {
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    };
    const Client before = *open.session.library().clients().find(open.example.mira);
    Client after = before;
    after.name = "Mira Vale";
    open.session.change_records(
        {"renamed her", [after](Library& library) { library.clients().change(after); }});
    open.session.say(QStringLiteral("The picture is kept with Mira."));
    ASSERT_TRUE(says(QStringLiteral("kept with Mira")));

    shown->client_looks = true;
    emit shown->alone_asked(true);
    EXPECT_FALSE(says(QStringLiteral("kept with Mira")));
    open.session.say(QStringLiteral("Two photos gone for good."));
    EXPECT_FALSE(says(QStringLiteral("gone for good")));
    QTest::keySequence(&window, QKeySequence::Undo);
    EXPECT_EQ(open.session.library().clients().find(open.example.mira), after);

    emit shown->alone_asked(false);
    EXPECT_TRUE(says(QStringLiteral("Two photos gone for good.")));
    EXPECT_FALSE(says(QStringLiteral("kept with Mira")));
}

}  // namespace
}  // namespace quarterturn
