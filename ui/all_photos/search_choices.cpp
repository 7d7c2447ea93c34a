#include "ui/all_photos/search_choices.h"

#include <QLocale>
#include <QPointer>

#include "ui/all_photos/days_choice.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/choice_list.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

const QString closing_sign = QStringLiteral("  ×");
const QString opening_sign = QStringLiteral("  ▾");

QString medium_shown(Date date) {
    return QLocale().toString(to_qdate(date), QStringLiteral("d MMM yyyy"));
}

template <class Words>
QStringList all_shown(const Words& words) {
    QStringList shown_words;
    for (const auto word : words) shown_words << shown(word);
    return shown_words;
}

}  // namespace

SearchChoices::SearchChoices(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), first_day_(session.today()), last_day_(session.today()) {
    new FlowLayout(space(2), this);
    layout()->setContentsMargins(0, 0, 0, 0);
    add_people();
    add_words();
    add_flags();
    refresh();
}

void SearchChoices::add(Choice choice) {
    choice.button = make_button({});
    layout()->addWidget(choice.button);
    choices_.push_back(std::move(choice));
    const std::size_t place = choices_.size() - 1;
    connect(choices_[place].button, &QPushButton::clicked, this,
            [this, place] { press(choices_[place]); });
}

void SearchChoices::add_people() {
    add({tr("Client"), [this] { return search_.client ? client_name(*search_.client) : QString(); },
         [this] { ask_client(); }, [this] { search_.client.reset(); }});
    add({tr("Look"),
         [this] {
             const auto look =
                 search_.look ? session_.library().looks().find(*search_.look) : std::nullopt;
             return look ? from_utf8(look->name) : QString();
         },
         [this] { ask_look(); }, [this] { search_.look.reset(); }});
    add({tr("Sitting"),
         [this] {
             const auto sitting = search_.sitting
                                      ? session_.library().sittings().find(*search_.sitting)
                                      : std::nullopt;
             return sitting ? sitting_name(*sitting) : QString();
         },
         [this] { ask_sitting(); }, [this] { search_.sitting.reset(); }});
}

void SearchChoices::add_words() {
    add({tr("Stage"), [this] { return search_.stage ? shown(*search_.stage) : QString(); },
         [this] {
             offer(tr("Stage"), all_shown(all_stages), [this](int entry) {
                 search_.stage = all_stages.at(static_cast<std::size_t>(entry));
             });
         },
         [this] { search_.stage.reset(); }});
    add({tr("Angle"), [this] { return search_.angle ? shown(*search_.angle) : QString(); },
         [this] {
             offer(tr("Angle"), all_shown(all_angles), [this](int entry) {
                 search_.angle = all_angles.at(static_cast<std::size_t>(entry));
             });
         },
         [this] { search_.angle.reset(); }});
    add({tr("Device"),
         [this] {
             const auto device =
                 search_.device ? session_.library().devices().find(*search_.device) : std::nullopt;
             return device ? shown(*device) : QString();
         },
         [this] { ask_device(); }, [this] { search_.device.reset(); }});
    add({tr("Days"), [this] { return days_words(); }, [this] { ask_days(); },
         [this] {
             search_.from.reset();
             search_.to.reset();
         }});
}

void SearchChoices::add_flags() {
    const auto add_flag = [this](const QString& name, bool PhotoSearch::*flag) {
        add({name, [this, name, flag] { return search_.*flag ? name : QString(); },
             [this, flag] { use([&] { search_.*flag = true; }); },
             [this, flag] { search_.*flag = false; }, false});
    };
    add_flag(tr("Has a flaw"), &PhotoSearch::flawed);
    add_flag(tr("Not placed yet"), &PhotoSearch::unplaced);
    add_flag(tr("In the bin"), &PhotoSearch::binned);
}

void SearchChoices::press(const Choice& choice) {
    if (choice.in_use().isEmpty()) {
        asked_ = choice.button;
        session_.attempt(choice.ask);
    } else {
        use(choice.drop);
    }
}

void SearchChoices::use(const std::function<void()>& change) {
    change();
    refresh();
    emit changed();
}

void SearchChoices::refresh() {
    for (const Choice& choice : choices_) {
        QString word;
        session_.attempt([&] { word = choice.in_use(); });
        const bool in_use = !word.isEmpty();
        choice.button->setText(in_use ? isolated(word) + closing_sign
                                      : choice.name + (choice.opens ? opening_sign : QString()));
        choice.button->setAccessibleName(in_use ? tr("No longer only: %1").arg(word)
                                                : tr("Show only one: %1").arg(choice.name));
        choice.button->setToolTip(in_use ? tr("Take this away") : QString());
        show_kind(*choice.button, in_use ? QStringLiteral("chosen") : QString());
    }
    layout()->invalidate();
    updateGeometry();
}

QStringList SearchChoices::in_words() const {
    QStringList words;
    for (const Choice& choice : choices_) {
        const QString word = choice.in_use();
        if (!word.isEmpty()) words << isolated(word);
    }
    return words;
}

void SearchChoices::clear() {
    search_ = {};
    refresh();
}

void SearchChoices::suggest_days(Date from, Date to) {
    first_day_ = from;
    last_day_ = to;
}

void SearchChoices::offer(const QString& name, const QStringList& entries,
                          std::function<void(int)> choose) {
    if (entries.isEmpty()) {
        session_.say(tr("There is nothing to choose from yet."));
        return;
    }
    auto* list = new ChoiceList(name, entries, this);
    connect(list, &ChoiceList::chosen, this,
            [this, choose = std::move(choose)](int entry) { use([&] { choose(entry); }); });
    list->open_below(*asked_);
}

void SearchChoices::ask_client() {
    const auto clients = session_.library().clients().all();
    QStringList names;
    for (const Client& client : clients) names << from_utf8(client.name);
    offer(tr("Client"), names, [this, clients](int entry) {
        search_.client = clients.at(static_cast<std::size_t>(entry)).id;
    });
}

void SearchChoices::ask_look() {
    auto looks = session_.library().looks().all();
    if (search_.client) {
        std::erase_if(looks, [&](const Look& look) { return look.client != *search_.client; });
    }
    QStringList names;
    for (const Look& look : looks) {
        //: a client and one of her looks
        names << tr("%1: %2").arg(client_name(look.client), from_utf8(look.name));
    }
    offer(tr("Look"), names, [this, looks](int entry) {
        search_.look = looks.at(static_cast<std::size_t>(entry)).id;
    });
}

void SearchChoices::ask_sitting() {
    auto sittings = session_.library().sittings().all();
    std::ranges::reverse(sittings);
    if (search_.client) {
        std::erase_if(sittings, [&](const Sitting& s) { return s.client != *search_.client; });
    }
    QStringList names;
    for (const Sitting& sitting : sittings) names << sitting_name(sitting);
    offer(tr("Sitting"), names, [this, sittings](int entry) {
        search_.sitting = sittings.at(static_cast<std::size_t>(entry)).id;
    });
}

void SearchChoices::ask_device() {
    const auto devices = session_.library().devices().all();
    QStringList names;
    for (const Device& device : devices) names << shown(device);
    offer(tr("Device"), names, [this, devices](int entry) {
        search_.device = devices.at(static_cast<std::size_t>(entry)).id;
    });
}

void SearchChoices::ask_days() {
    auto* days = new DaysChoice(first_day_, last_day_, this);
    connect(days, &DaysChoice::chosen, this, [this](Date from, Date to) {
        use([&] {
            search_.from = from;
            search_.to = to;
        });
    });
    place_below(*days, *asked_);
    days->show();
}

QString SearchChoices::client_name(ClientId client) const {
    const auto found = session_.library().clients().find(client);
    return found ? from_utf8(found->name) : QString();
}

QString SearchChoices::sitting_name(const Sitting& sitting) const {
    //: a day, a client and the kind of her sitting
    return tr("%1, %2, %3")
        .arg(medium_shown(date_of(sitting.starts)), isolated(client_name(sitting.client)),
             shown(sitting.kind));
}

QString SearchChoices::days_words() const {
    if (!search_.from || !search_.to) return {};
    if (*search_.from == *search_.to) return medium_shown(*search_.from);
    //: from one day to another
    return tr("%1 to %2").arg(medium_shown(*search_.from), medium_shown(*search_.to));
}

}  // namespace quarterturn
