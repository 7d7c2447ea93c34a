#pragma once

#include <QWidget>
#include <map>

#include "indexer/looks/consents.h"

class QDateEdit;
class QVBoxLayout;

namespace quarterturn {

class PhotoTile;
class Session;

// What is out there and may not be any longer, to be ticked off with the day it was taken down:
// each, or all at once that went to one folder on one day. Hidden while there is nothing.
class TakeDownList : public QWidget {
    Q_OBJECT
  public:
    explicit TakeDownList(Session& session, QWidget* parent = nullptr);

    void show_tasks(const std::vector<ToTakeDown>& tasks);

  private:
    using Tasks = std::vector<ToTakeDown>;
    QWidget* make_day();
    void add_group(const Tasks& tasks);
    QWidget* make_task(const ToTakeDown& task);
    QWidget* make_picture(const Photo& photo);
    void show_picture(PhotoId photo);
    void tick_off(const std::vector<ExportId>& ids);

    Session& session_;
    QDateEdit* day_;
    QVBoxLayout* tasks_;
    std::map<PhotoId, Photo> photos_;
    std::multimap<PhotoId, PhotoTile*> tiles_;
};

// "Website, 7 November 2026: IMG_0012.jpg"
QString export_words(const Exported& exported);

}  // namespace quarterturn
