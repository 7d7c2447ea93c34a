#include "ui/consent/take_down_list.h"

#include <QDateEdit>

#include "ui/consent/consent_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int picture_steps = 24;

std::string folder_of_export(const Exported& exported) {
    return Path(exported.file).parent_path().string();
}

QString picture_words(const Photo& photo) {
    //: a file name
    return TakeDownList::tr("Photo %1").arg(from_utf8(photo.file.name));
}

}  // namespace

QString export_words(const Exported& exported) {
    //: a use, the day a picture went out for it, and the photo's name
    return TakeDownList::tr("%1, %2: %3")
        .arg(capitalised_words(shown(exported.use)), shown(date_of(exported.at)),
             isolated(from_utf8(exported.photo_name)));
}

TakeDownList::TakeDownList(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    const Card card = make_card();
    card.column->setSpacing(space(3));
    card.column->addWidget(make_heading(tr("To take down")));
    card.column->addWidget(make_quiet(
        tr("These are out there and may not be shown any longer. Take them down where they are, "
           "and tick them off here.")));
    card.column->addWidget(make_day());
    tasks_ = make_column(3);
    card.column->addLayout(tasks_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(card.frame);
    connect(&session_.pictures(), &PictureLoader::arrived, this, &TakeDownList::show_picture);
    hide();
}

QWidget* TakeDownList::make_day() {
    const Date today = session_.today();
    day_ = make_date_field(today);
    day_->setMaximumDate(to_qdate(today));
    const QString name = tr("The day they were taken down");
    day_->setAccessibleName(name);
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(3));
    parts->addWidget(make_text(name));
    parts->addWidget(day_);
    parts->addStretch();
    return row;
}

void TakeDownList::show_tasks(const Tasks& tasks) {
    empty_layout(tasks_);
    tiles_.clear();
    photos_.clear();
    day_->setMaximumDate(to_qdate(session_.today()));
    std::map<std::pair<std::string, Date>, Tasks> groups;
    for (const ToTakeDown& task : tasks) {
        groups[{folder_of_export(task.exported), date_of(task.exported.at)}].push_back(task);
    }
    for (const auto& [where, group] : groups) add_group(group);
    std::vector<PictureWish> wishes;
    for (const auto& [id, photo] : photos_) wishes.push_back({photo, small_long_edge});
    session_.pictures().want(this, wishes);
    for (const auto& [id, photo] : photos_) show_picture(id);
    setVisible(!tasks.empty());
}

void TakeDownList::add_group(const Tasks& tasks) {
    if (tasks.size() > 1) {
        std::vector<ExportId> ids;
        for (const ToTakeDown& task : tasks) ids.push_back(task.exported.id);
        QPushButton* all = make_button(
            tr("All %n in this folder were taken down", nullptr, static_cast<int>(tasks.size())));
        connect(all, &QPushButton::clicked, this, [this, ids] { tick_off(ids); });
        tasks_->addWidget(make_hairline());
        //: a folder, and the day pictures went out to it
        tasks_->addWidget(
            make_text(tr("%1, %2").arg(from_utf8(folder_of_export(tasks.front().exported)),
                                       shown(date_of(tasks.front().exported.at)))));
        tasks_->addWidget(all, 0, Qt::AlignLeading);
    }
    for (const ToTakeDown& task : tasks) {
        tasks_->addWidget(make_hairline());
        tasks_->addWidget(make_task(task));
    }
}

QWidget* TakeDownList::make_task(const ToTakeDown& task) {
    const Exported& out = task.exported;
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(3));
    const auto photo = session_.library().photos().find_also_in_bin(out.photo);
    if (photo) parts->addWidget(make_picture(*photo), 0, Qt::AlignTop);
    QVBoxLayout* words = make_column(0);
    words->addWidget(make_text(export_words(out)));
    for (const std::string& place : out.places) {
        //: where an exported picture was put
        words->addWidget(make_text(tr("Put at: %1").arg(from_utf8(place))));
    }
    words->addWidget(make_quiet(from_utf8(out.file)));
    for (const std::string& why : task.why) words->addWidget(make_quiet(from_utf8(why)));
    parts->addLayout(words, 1);
    QPushButton* tick = make_button(tr("Taken down"));
    tick->setAccessibleName(tr("%1 was taken down").arg(from_utf8(out.photo_name)));
    connect(tick, &QPushButton::clicked, this, [this, id = out.id] { tick_off({id}); });
    parts->addWidget(tick, 0, Qt::AlignTop);
    return row;
}

// To know it by, and no more: what is done is done to the ledger's entry.
QWidget* TakeDownList::make_picture(const Photo& photo) {
    auto* tile = new PhotoTile(photo.id, {space(picture_steps), space(picture_steps)});
    tile->setAccessibleName(picture_words(photo));
    tile->setFocusPolicy(Qt::NoFocus);
    tile->setEnabled(false);
    tiles_.emplace(photo.id, tile);
    photos_.emplace(photo.id, photo);
    return tile;
}

void TakeDownList::show_picture(PhotoId photo) {
    const auto known = photos_.find(photo);
    if (known == photos_.end()) return;
    PhotoLook look;
    look.picture = session_.pictures().at_hand(photo, small_long_edge);
    look.mirrored = known->second.tags.mirrored;
    const auto [first, last] = tiles_.equal_range(photo);
    for (auto tile = first; tile != last; ++tile) {
        tile->second->show_look(look);
        tile->second->setAccessibleName(picture_words(known->second));
    }
}

void TakeDownList::tick_off(const std::vector<ExportId>& ids) {
    const TakenDown down{date_in(*day_), {}};
    const bool kept = session_.attempt([&] { tick_off_all(session_.library(), ids, down); });
    if (kept) session_.touch();
}

}  // namespace quarterturn
