// The keys of going round the head: what each does and how the help says it.

#include <QShortcut>

#include "ui/round_the_head/hand_part.h"
#include "ui/round_the_head/round_the_head_screen.h"

namespace quarterturn {

void RoundTheHeadScreen::name_keys() {
    const auto place = [this](Angle angle) {
        return [this, angle] { use([this, angle] { round_.place(angle); }); };
    };
    const auto say = [this](Stage stage) {
        return [this, stage] { use([this, stage] { round_.say_stage(stage); }); };
    };
    keys_ = {
        {Qt::Key_Up,
         tr("Arrow keys: the photo was taken from there. Up is the front, down the "
            "back, left and right are the client's own."),
         place(Angle::front)},
        {Qt::Key_Down, {}, place(Angle::back)},
        {Qt::Key_Left, {}, place(Angle::left)},
        {Qt::Key_Right, {}, place(Angle::right)},
        {Qt::SHIFT | Qt::Key_Left,
         tr("With Shift: left and right are the three-quarters, up is the crown, down a detail."),
         place(Angle::left_three_quarter)},
        {Qt::SHIFT | Qt::Key_Right, {}, place(Angle::right_three_quarter)},
        {Qt::SHIFT | Qt::Key_Up, {}, place(Angle::crown)},
        {Qt::SHIFT | Qt::Key_Down, {}, place(Angle::detail)},
        {Qt::Key_Y, tr("Y: yes, it is as suggested."),
         [this] { use([this] { round_.take_suggestion(); }); }},
        {Qt::Key_B, tr("B, D, A: before, during, after."), say(Stage::before)},
        {Qt::Key_D, {}, say(Stage::during)},
        {Qt::Key_A, {}, say(Stage::after)},
        {Qt::Key_L, tr("L: the client's other look."),
         [this] { use([this] { round_.other_look(); }); }},
        {Qt::Key_M, tr("M: taken in a mirror, or not."),
         [this] { use([this] { round_.turn_round(); }); }},
        {Qt::Key_W, tr("W: use a flawed photo anyway, and say why."), [this] { hand_->ask_why(); }},
        {Qt::Key_Comma, tr("Comma, full stop: the photo before or after, unplaced."),
         [this] { use([this] { round_.step(-1); }); }},
        {Qt::Key_Period, {}, [this] { use([this] { round_.step(1); }); }},
        {Qt::Key_Backspace, tr("Backspace: take a photo from its place."),
         [this] { use([this] { round_.take_off(); }); }},
        {Qt::Key_Delete,
         tr("Delete: into the bin, such as a test shot. It stays there for 30 days, under Photos "
            "of everything."),
         [this] { use([this] { round_.put_into_bin(); }); }},
        {Qt::Key_E, tr("E: every pixel, to see whether it is sharp."),
         [this] { look_closer(false); }},
        {Qt::Key_S, tr("S: two photos side by side."), [this] { look_closer(true); }},
    };
}

QString RoundTheHeadScreen::help() const {
    QStringList lines{
        tr("Place every photo where the camera stood. A photo can be dragged to its "
           "place, too.")};
    for (const KeyedAct& act : keys_) {
        if (!act.said.isEmpty()) lines << act.said;
    }
    return lines.join(QLatin1Char('\n'));
}

void RoundTheHeadScreen::add_shortcuts(QWidget& body) {
    for (const KeyedAct& keyed : keys_) {
        auto* shortcut =
            new QShortcut(keyed.key, &body, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, keyed.act);
    }
}

}  // namespace quarterturn
