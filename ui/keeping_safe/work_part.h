#pragma once

#include <QFrame>

#include "indexer/disk/file_system.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Job;
class Notice;
class Session;

// A card of this page: heading, what it is for, how things stand, and the ways on. While its work
// runs, that shows itself in place of the ways on; what came of it stands there in words.
class WorkPart : public QFrame {
    Q_OBJECT
  public:
    // Shows how things stand now.
    virtual void refresh() = 0;

  protected:
    WorkPart(Session& session, const QString& heading, const QString& what_for);

    Session& session() const { return session_; }
    QVBoxLayout* standing() const { return standing_; }  // how things stand
    QVBoxLayout* ways() const { return ways_; }          // the ways on

    // False, after saying so, while something else is at work in the library.
    bool may_begin();
    void show_work(Job* job, const QString& work);
    // Sentences, the first of them the outcome; long lists are cut short and say so.
    void report(const QStringList& sentences);

    // Her choice in the system's dialog; empty when she chose none.
    Path choose_folder(const QString& question);

  private:
    Session& session_;
    QVBoxLayout* standing_;
    QVBoxLayout* ways_;
    QVBoxLayout* work_;
    QVBoxLayout* report_;
    QWidget* ways_frame_;
    Notice* notice_;
};

// A row of buttons that stands where reading begins, and goes on below where it is narrow.
QWidget* make_button_row(const std::vector<QPushButton*>& buttons);

}  // namespace quarterturn
