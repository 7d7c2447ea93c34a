#pragma once

#include <QWidget>

#include "indexer/looks/consents.h"

class QVBoxLayout;

namespace quarterturn {

class Session;

// What is out there and may not be any longer, each to be ticked off with the day it was taken
// down. Hidden while there is nothing.
class TakeDownList : public QWidget {
    Q_OBJECT
  public:
    explicit TakeDownList(Session& session, QWidget* parent = nullptr);

    void show_tasks(const std::vector<ToTakeDown>& tasks);

  private:
    QWidget* make_task(const ToTakeDown& task);
    void tick_off(ExportId id, Date on);

    Session& session_;
    QVBoxLayout* tasks_;
};

// "Website, 7 November 2026: IMG_0012.jpg"
QString export_words(const Exported& exported);

}  // namespace quarterturn
